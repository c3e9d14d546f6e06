package org.hedgerow.seedlexicon;

/**
 * A variant of the dictionary that a person has set aside, because a teacher would not read the
 * word so.
 *
 * @param word lower-case letters only
 * @param arpabet the variant, as the dictionary writes it
 */
public record VariantRow(String word, String arpabet) {

  static VariantRow from(TsvRow row) {
    return new VariantRow(row.required("word"), row.required("sounds"));
  }
}
