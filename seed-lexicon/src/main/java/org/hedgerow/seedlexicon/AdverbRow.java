package org.hedgerow.seedlexicon;

import java.util.List;

/**
 * What may end a sentence.
 *
 * @param adverb one word or several
 * @param after what the sentence says before: action, place, state
 */
public record AdverbRow(String adverb, List<String> after) {

  public AdverbRow {
    after = List.copyOf(after);
  }

  static AdverbRow from(TsvRow row) {
    row.required("after");
    return new AdverbRow(row.required("adverb"), row.terms("after"));
  }
}
