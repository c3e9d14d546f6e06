package org.hedgerow.bench;

import java.util.Locale;

/** A word of two syllables that hardly any dictionary has, as it is spelt and said. */
public record MadeUpWord(String spelling, String sounds) {
  private static final String[] CONSONANTS = {"b", "d", "f", "l", "m", "n", "p", "t", "v", "z"};
  private static final String[] VOWELS = {"a", "e", "i", "o"};
  private static final String[] VOWEL_SOUNDS = {"AE", "EH", "IH", "AA"};

  /** Others for every number up to 160,000, scattered. */
  public static MadeUpWord of(int number) {
    int rest = (int) (number * 70_001L % 160_000);
    StringBuilder spelling = new StringBuilder();
    StringBuilder sounds = new StringBuilder();
    for (int place = 0; place < 6; place++) {
      boolean vowel = place % 3 == 1;
      String[] letters = vowel ? VOWELS : CONSONANTS;
      int choice = rest % letters.length;
      rest /= letters.length;
      spelling.append(letters[choice]);
      sounds
          .append(vowel ? VOWEL_SOUNDS[choice] : letters[choice].toUpperCase(Locale.ROOT))
          .append(' ');
    }
    return new MadeUpWord(spelling.toString(), sounds.toString().strip());
  }
}
