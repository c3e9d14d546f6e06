package org.hedgerow.seedlexicon;

import java.util.List;
import java.util.OptionalInt;

/**
 * What WordNet says of a word in common use.
 *
 * @param parts parts of speech, the commonest first
 * @param uses how many uses in tagged texts that order comes from; empty if it was set by hand
 * @param formOf the word of which this is a form, if WordNet only knows that one; else empty
 * @param meanings WordNet's classes of its senses, the commonest first
 * @param picturable how well it can be shown in a picture, 0 to 3
 * @param because what its commonest sense is, in words
 * @param rarer whether it is less picturable because children may call it by another name
 */
public record TagRow(
    String word,
    List<String> parts,
    OptionalInt uses,
    String formOf,
    List<String> meanings,
    int picturable,
    String because,
    boolean rarer) {

  public TagRow {
    parts = List.copyOf(parts);
    meanings = List.copyOf(meanings);
  }

  static TagRow from(TsvRow row) {
    return new TagRow(
        row.required("word"),
        List.of(row.required("parts").split(" ")),
        row.optionalNumber("uses"),
        row.text("form-of"),
        row.text("meanings").isEmpty() ? List.of() : List.of(row.text("meanings").split(" ")),
        row.level("picturable"),
        row.required("because"),
        row.yes("rarer"));
  }
}
