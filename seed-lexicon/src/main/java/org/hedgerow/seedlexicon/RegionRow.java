package org.hedgerow.seedlexicon;

/**
 * A word that only one region writes, though SCOWL doesn't mark it.
 *
 * @param region {@code american} or {@code british}
 * @param because why, for people
 */
public record RegionRow(String word, String region, String because) {

  static RegionRow from(TsvRow row) {
    return new RegionRow(row.required("word"), row.required("region"), row.required("because"));
  }
}
