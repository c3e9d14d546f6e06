package org.hedgerow.seedlexicon;

/**
 * An adverb that may end a sentence in which something happened.
 *
 * @param kind what it says: time, degree…
 */
public record AdverbRow(String adverb, String kind) {

  static AdverbRow from(TsvRow row) {
    return new AdverbRow(row.required("adverb"), row.required("kind"));
  }
}
