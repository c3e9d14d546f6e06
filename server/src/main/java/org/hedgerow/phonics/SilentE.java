package org.hedgerow.phonics;

/** What a silent e asks of the letter after it. */
final class SilentE {

  static final String VOWEL_LETTERS = "aeiouy";

  private static final char WORD_END = ' ';
  private static final char CONSONANT_Y = 'Y';

  private SilentE() {}

  /** The letter at a position; a y that begins a syllable counts as none of the vowel letters. */
  static char letterAt(String spelling, int position) {
    if (position >= spelling.length()) {
      return WORD_END;
    }
    char letter = spelling.charAt(position);
    boolean opens =
        letter == 'y'
            && position + 1 < spelling.length()
            && VOWEL_LETTERS.indexOf(spelling.charAt(position + 1)) >= 0;
    return opens ? CONSONANT_Y : letter;
  }

  /** Letters before which c and g are soft and r is said without the help of an e. */
  static boolean isNeedlessBefore(char letter) {
    return letter == 'e' || letter == 'i' || letter == 'y';
  }

  /** Letters that make one grapheme with an e before them, so that the e is not silent. */
  static boolean joins(char letter) {
    return isNeedlessBefore(letter) || letter == 'u';
  }
}
