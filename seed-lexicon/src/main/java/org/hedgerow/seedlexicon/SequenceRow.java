package org.hedgerow.seedlexicon;

/**
 * An order in which phonograms are taught.
 *
 * @param name letters
 * @param title what a teacher calls it
 * @param note what is special about it
 */
public record SequenceRow(String name, String title, String note) {

  static SequenceRow from(TsvRow row) {
    return new SequenceRow(row.required("name"), row.required("title"), row.required("note"));
  }
}
