package org.hedgerow.seedlexicon;

/**
 * A word of the dictionary that is only known as a name.
 *
 * @param word in lower case, as in the dictionary
 * @param reason how that is known
 */
public record NameRow(String word, String reason) {

  static NameRow from(TsvRow row) {
    return new NameRow(row.required("word"), row.required("reason"));
  }
}
