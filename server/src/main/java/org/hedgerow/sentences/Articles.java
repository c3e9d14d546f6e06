package org.hedgerow.sentences;

import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;

/** Whether words take <em>a</em> or <em>an</em>, which their sounds decide. */
public final class Articles {

  private static final String VOWELS = "aeiou";

  private final Lexicon lexicon;
  private final String accent;

  /**
   * @param accent the tag of the accent in which words are said
   */
  public Articles(Lexicon lexicon, String accent) {
    this.lexicon = lexicon;
    this.accent = accent;
  }

  /**
   * Whether a word is said with a vowel first; of one that the bank doesn't hold, whether it is
   * written so.
   */
  public boolean startsWithVowel(String word) {
    return lexicon
        .word(word)
        .flatMap(known -> known.saidIn(accent).stream().findFirst())
        .map(Pronunciation::sounds)
        .map(sounds -> sounds.get(0))
        .map(Sound::vowel)
        .orElseGet(() -> VOWELS.indexOf(word.charAt(0)) >= 0);
  }
}
