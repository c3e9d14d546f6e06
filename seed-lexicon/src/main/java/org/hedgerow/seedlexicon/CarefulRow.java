package org.hedgerow.seedlexicon;

/**
 * A pronunciation that a teacher says more carefully than the dictionary.
 *
 * @param word lower-case letters only
 * @param arpabet as the dictionary writes it
 * @param careful as a teacher says it, in ARPAbet too
 */
public record CarefulRow(String word, String arpabet, String careful) {

  static CarefulRow from(TsvRow row) {
    return new CarefulRow(row.required("word"), row.required("sounds"), row.required("careful"));
  }
}
