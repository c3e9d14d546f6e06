package org.hedgerow.seedlexicon;

/**
 * The learned cost of a correspondence.
 *
 * @param accent a BCP 47 tag, such as {@code en-US}
 * @param grapheme the letters; a split grapheme has a hyphen, such as {@code i-e}
 * @param sounds IPA sounds separated by blanks; empty for silent letters
 * @param cost the negative logarithm of a probability, so never below 0
 */
public record WeightRow(String accent, String grapheme, String sounds, double cost) {

  static WeightRow from(TsvRow row) {
    return new WeightRow(
        row.required("accent"),
        row.required("grapheme"),
        Sounds.withoutSilence(row.text("sounds")),
        row.decimal("cost"));
  }
}
