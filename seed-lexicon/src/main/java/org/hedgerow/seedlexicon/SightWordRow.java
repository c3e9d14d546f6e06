package org.hedgerow.seedlexicon;

/**
 * A word that children learn whole.
 *
 * @param set the name of a set that it is in
 * @param word in lower case, perhaps with an apostrophe
 */
public record SightWordRow(String set, String word) {

  static SightWordRow from(TsvRow row) {
    return new SightWordRow(row.required("set"), row.required("word"));
  }
}
