package org.hedgerow.seedlexicon;

import java.util.List;

/**
 * An adjective and what it may describe.
 *
 * @param nouns classes of nouns, and nouns with = before them
 * @param kind what it says: size, colour, taste…
 * @param place {@code before} the noun, {@code after} is, or {@code both}
 * @param against adjectives that contradict it
 */
public record AdjectiveRow(
    String adjective, List<String> nouns, String kind, String place, List<String> against) {

  public AdjectiveRow {
    nouns = List.copyOf(nouns);
    against = List.copyOf(against);
  }

  static AdjectiveRow from(TsvRow row) {
    row.required("of");
    return new AdjectiveRow(
        row.required("adjective"),
        row.terms("of"),
        row.required("kind"),
        row.required("place"),
        row.terms("against"));
  }
}
