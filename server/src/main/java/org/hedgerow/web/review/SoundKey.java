package org.hedgerow.web.review;

/**
 * A sound, as it can be picked by whoever reads no phonetic alphabet.
 *
 * @param letters its usual spelling, as in {@code oa}
 * @param word that shows it, as in {@code boat}
 * @param words how it is heard, as in {@code “oh”}
 */
record SoundKey(String ipa, String letters, String word, String words, boolean vowel) {
  /** As in {@code oa as in boat}. */
  String example() {
    return word.isEmpty() ? words : letters + " as in " + word;
  }
}
