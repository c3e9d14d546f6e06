package org.hedgerow.seedlexicon;

/**
 * A named set of words that children learn whole.
 *
 * @param name letters
 * @param title what a teacher calls it
 * @param note for whom it is
 */
public record SightWordSetRow(String name, String title, String note) {

  static SightWordSetRow from(TsvRow row) {
    return new SightWordSetRow(row.required("name"), row.required("title"), row.required("note"));
  }
}
