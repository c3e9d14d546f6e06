package org.hedgerow.seedlexicon;

/**
 * A sentence with words to choose from.
 *
 * @param kind statement, question or command
 * @param scene the words, without capital and final mark; choices in square brackets, with |
 *     between
 */
public record SceneRow(String kind, String scene) {

  static SceneRow from(TsvRow row) {
    return new SceneRow(row.required("kind"), row.required("scene"));
  }
}
