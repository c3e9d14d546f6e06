package org.hedgerow.seedlexicon;

/**
 * How a word is said in an accent that the dictionary is not in; a word may have several lines, the
 * usual one first.
 *
 * @param word lower-case letters only
 * @param sounds IPA sounds of the accent separated by blanks
 * @param source where it comes from, such as {@code espeak-ng} or {@code hand}
 */
public record SpokenRow(String word, String sounds, String source) {

  static SpokenRow from(TsvRow row) {
    return new SpokenRow(row.required("word"), row.required("sounds"), row.required("source"));
  }
}
