package org.hedgerow.phonics;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A phoneme of one accent's inventory.
 *
 * @param ipa the symbol in the International Phonetic Alphabet, such as {@code oʊ} or {@code tʃ}
 * @param vowel whether it is a vowel
 */
public record Sound(String ipa, boolean vowel) {

  public Sound {
    requireNonNull(ipa);
  }

  /** Whether this is a reduced vowel, the weak sound of an unstressed syllable. */
  public boolean isSchwa() {
    return ipa.equals("ə");
  }

  /** The sounds written one after the other, without spaces; empty for no sound. */
  public static String joined(List<Sound> sounds) {
    return sounds.stream().map(Sound::ipa).collect(Collectors.joining());
  }

  /** The sounds separated by spaces, as the interface writes a pronunciation. */
  public static String spaced(List<Sound> sounds) {
    return sounds.stream().map(Sound::ipa).collect(Collectors.joining(" "));
  }

  @Override
  public String toString() {
    return ipa;
  }
}
