package org.hedgerow.seedlexicon;

import java.util.List;

/**
 * A class of nouns.
 *
 * @param parents classes that it belongs to
 * @param meaning what it stands for, in words
 */
public record NounClassRow(String name, List<String> parents, String meaning) {

  public NounClassRow {
    parents = List.copyOf(parents);
  }

  static NounClassRow from(TsvRow row) {
    return new NounClassRow(row.required("class"), row.terms("parents"), row.required("meaning"));
  }
}
