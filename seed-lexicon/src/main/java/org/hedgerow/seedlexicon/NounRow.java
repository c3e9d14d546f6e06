package org.hedgerow.seedlexicon;

import java.util.List;

/**
 * A noun and what it stands for.
 *
 * @param plural empty where the inflected forms tell it
 * @param number {@code count}, {@code mass} or {@code pair}
 * @param size 0 for what has no body, 1 for what fits in a closed hand, up to 6 for land
 * @param classes names of {@link NounClassRow classes}, the most telling first
 * @param landmarks the prepositions that make a place of it
 */
public record NounRow(
    String noun,
    String plural,
    String number,
    int size,
    List<String> classes,
    List<String> landmarks) {

  public NounRow {
    classes = List.copyOf(classes);
    landmarks = List.copyOf(landmarks);
  }

  static NounRow from(TsvRow row) {
    row.required("classes");
    return new NounRow(
        row.required("noun"),
        row.text("plural"),
        row.required("number"),
        row.number("size"),
        row.terms("classes"),
        row.terms("landmarks"));
  }
}
