package org.hedgerow.lexicon;

import java.util.List;
import java.util.OptionalInt;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;

/**
 * A sound with all its spellings.
 *
 * @param arpabet its name in ARPAbet, with a stress where only that tells it from another; empty if
 *     no source of the bank gives it
 * @param keyWord a word that shows the sound
 * @param spellings the commonest first
 */
public record SoundFamily(Sound sound, String arpabet, String keyWord, List<Spelling> spellings) {

  public SoundFamily {
    spellings = List.copyOf(spellings);
  }

  /**
   * One spelling of the sound.
   *
   * @param keyWord a word in which the letters say the sound
   * @param share of all places where common words say the sound, from 0 to 1
   * @param words how many words the default list holds; empty if it isn't taught on its own
   * @param examples a few words, the commonest first
   */
  public record Spelling(
      Correspondence correspondence,
      String keyWord,
      double share,
      OptionalInt words,
      List<String> examples) {

    public Spelling {
      examples = List.copyOf(examples);
    }
  }
}
