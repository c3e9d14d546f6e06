package org.hedgerow.seedlexicon;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How common a word is.
 *
 * @param word lower-case letters only
 * @param size the smallest SCOWL list that holds the word: 10, 20, 35, 40, 50, 55, 60 or 70; 10 is
 *     commonest
 * @param regions the spellings of English that have the word ({@code american}, {@code british},
 *     {@code canadian}, {@code australian}); empty for a word of all of them
 */
public record CommonnessRow(String word, int size, Set<String> regions) {

  public CommonnessRow {
    regions = Set.copyOf(regions);
  }

  static CommonnessRow from(TsvRow row) {
    return new CommonnessRow(
        row.required("word"), row.number("size"), regionsFrom(row.text("region")));
  }

  private static Set<String> regionsFrom(String text) {
    return text.isEmpty()
        ? Set.of()
        : Arrays.stream(text.split(",", -1)).collect(Collectors.toUnmodifiableSet());
  }
}
