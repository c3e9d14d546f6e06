package org.hedgerow.seedlexicon;

import java.util.Arrays;
import java.util.List;

/**
 * How tables write sounds: sounds separated by blanks, alternatives by {@code |}, {@code ∅} for
 * silence.
 */
final class Sounds {
  private static final String SILENCE = "∅";

  private Sounds() {}

  static List<String> alternatives(String text) {
    return Arrays.stream(text.split("\\|", -1)).map(Sounds::withoutSilence).toList();
  }

  /** Silence becomes the empty string, as everywhere outside the tables. */
  static String withoutSilence(String text) {
    String sounds = text.strip();
    return sounds.equals(SILENCE) ? "" : sounds;
  }
}
