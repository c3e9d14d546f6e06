package org.hedgerow.seedlexicon;

/** One line of the dictionary: a word with one of its pronunciations. */
record PronunciationRow(String word, String arpabet) {

  static PronunciationRow from(TsvRow row) {
    return new PronunciationRow(row.required("word"), row.required("sounds"));
  }
}
