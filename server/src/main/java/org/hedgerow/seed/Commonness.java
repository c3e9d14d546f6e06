package org.hedgerow.seed;

import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hedgerow.seedlexicon.CommonnessRow;

/**
 * How common words are, from 5 (SCOWL size 10) to 1 (beyond size 50), wherever they are commonest.
 * A spelling of one region bears a tag that keeps it out of others' lists ({@link Spellings});
 * spellings of Canada alone, for which there is no accent, count as rare.
 */
final class Commonness {

  /** Of words beyond SCOWL size 50, and of those that it does not know. */
  static final int RARE = 1;

  private final Map<String, Integer> levels;

  Commonness(List<CommonnessRow> rows) {
    this.levels =
        rows.stream()
            .filter(row -> !row.regions().equals(Set.of("canadian")))
            .collect(toMap(CommonnessRow::word, row -> level(row.size()), Math::max));
  }

  int of(String word) {
    return levels.getOrDefault(word, RARE);
  }

  private static int level(int size) {
    if (size <= 10) {
      return 5;
    }
    if (size <= 20) {
      return 4;
    }
    if (size <= 35) {
      return 3;
    }
    return size <= 50 ? 2 : RARE;
  }
}
