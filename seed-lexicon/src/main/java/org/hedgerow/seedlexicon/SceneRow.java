package org.hedgerow.seedlexicon;

/**
 * A sentence with words to choose from.
 *
 * @param phonogram for whose value it was written; it may serve others too
 * @param kind statement, question or command
 * @param scene the words, without capital and final mark; choices in square brackets, with |
 *     between
 */
public record SceneRow(String phonogram, int value, String kind, String scene) {

  static SceneRow from(TsvRow row) {
    return new SceneRow(
        row.required("phonogram"),
        row.number("value"),
        row.required("kind"),
        row.required("scene"));
  }
}
