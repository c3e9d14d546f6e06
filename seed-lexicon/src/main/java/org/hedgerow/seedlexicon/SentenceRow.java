package org.hedgerow.seedlexicon;

/**
 * A sentence of the first edition.
 *
 * @param phonogram the grapheme that it is for
 * @param value the number of its value
 */
public record SentenceRow(String phonogram, int value, String sentence) {

  static SentenceRow from(TsvRow row) {
    return new SentenceRow(
        row.required("phonogram"), row.number("value"), row.required("sentence"));
  }
}
