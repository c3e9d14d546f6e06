package org.hedgerow.seedlexicon;

/**
 * An inflected form. A form may have several rows: <em>walks</em> is a plural and a third person.
 *
 * @param form the inflected word
 * @param base the word it is a form of
 * @param kind what it is of its base
 * @param regular whether the form follows the spelling rules of its ending
 * @param ownLemma whether WordNet has the form as a noun or verb of its own, such as
 *     <em>building</em>
 */
public record InflectionRow(
    String form, String base, InflectionKind kind, boolean regular, boolean ownLemma) {

  static InflectionRow from(TsvRow row) {
    return new InflectionRow(
        row.required("form"),
        row.required("base"),
        Labels.of(row, "kind", InflectionKind.values(), InflectionKind::label),
        isRegular(row),
        row.yes("own-lemma"));
  }

  private static boolean isRegular(TsvRow row) {
    return switch (row.text("regularity")) {
      case "regular" -> true;
      case "irregular" -> false;
      default -> throw row.mistake("whose column \"regularity\" is neither regular nor irregular");
    };
  }
}
