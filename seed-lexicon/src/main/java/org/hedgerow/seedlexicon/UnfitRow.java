package org.hedgerow.seedlexicon;

/**
 * A word unfit for children of four to six.
 *
 * @param word in lower case
 * @param reason the kind of thing it is about
 */
public record UnfitRow(String word, UnfitReason reason) {

  static UnfitRow from(TsvRow row) {
    return new UnfitRow(
        row.required("word"), Labels.of(row, "reason", UnfitReason.values(), UnfitReason::label));
  }
}
