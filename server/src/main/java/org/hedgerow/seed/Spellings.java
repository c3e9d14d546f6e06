package org.hedgerow.seed;

import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.seedlexicon.CommonnessRow;
import org.hedgerow.seedlexicon.RegionRow;

/**
 * Which words only American or only British writers spell so, after SCOWL's lists for single
 * countries and a few decisions by hand. Australia spells as Britain does, and Canada, for which
 * there is no accent, doesn't count.
 */
final class Spellings {

  private static final String AMERICAN = "american";
  private static final String BRITISH = "british";
  private static final String AUSTRALIAN = "australian";

  private final Map<String, Set<String>> regions;
  private final Map<String, RegionRow> decided;

  Spellings(List<CommonnessRow> rows, List<RegionRow> decided) {
    this.regions =
        rows.stream()
            .filter(row -> !row.regions().isEmpty())
            .collect(toMap(CommonnessRow::word, CommonnessRow::regions));
    this.decided = decided.stream().collect(toMap(RegionRow::word, row -> row));
  }

  /** The region whose spelling a word is, if others spell it otherwise. */
  Optional<Tag> only(String word) {
    return Optional.ofNullable(decided.get(word))
        .map(row -> new Tag(Tag.REGION, row.region(), row.because()))
        .or(() -> listed(word));
  }

  private Optional<Tag> listed(String word) {
    Set<String> lists = regions.getOrDefault(word, Set.of());
    boolean american = lists.contains(AMERICAN);
    boolean british = lists.contains(BRITISH) || lists.contains(AUSTRALIAN);
    if (american == british) {
      return Optional.empty();
    }
    return Optional.of(
        new Tag(
            Tag.REGION,
            american ? AMERICAN : BRITISH,
            "SCOWL lists it for " + String.join(" and ", lists.stream().sorted().toList())));
  }
}
