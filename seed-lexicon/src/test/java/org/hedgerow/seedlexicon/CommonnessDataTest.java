package org.hedgerow.seedlexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class CommonnessDataTest {
  private static final Set<Integer> SIZES = Set.of(10, 20, 35, 40, 50, 55, 60, 70);
  private static final Set<String> REGIONS =
      Set.of("american", "british", "canadian", "australian");

  private final List<CommonnessRow> rows = SeedLexicon.bundled().commonness();

  @Test
  void isSortedWithoutRepetition() {
    Ordered.assertStrictly(rows.stream().map(CommonnessRow::word).toList());
  }

  @Test
  void hasScowlSizesAndRegionsOnly() {
    assertThat(rows).allSatisfy(row -> assertThat(SIZES).contains(row.size()));
    assertThat(rows).allSatisfy(row -> assertThat(REGIONS).containsAll(row.regions()));
  }

  /** A region only says something where another region lacks the word. */
  @Test
  void namesNeverAllRegions() {
    assertThat(rows).allSatisfy(row -> assertThat(row.regions()).hasSizeLessThan(REGIONS.size()));
  }

  @Test
  void knowsWordsOfOneSpellingOfEnglish() {
    assertThat(row("colour").regions()).containsOnly("british", "canadian", "australian");
    assertThat(row("color").regions()).containsOnly("american");
  }

  @Test
  void ranksEverydayWordsFirst() {
    assertThat(row("house").size()).isEqualTo(10);
    assertThat(row("hedge").size()).isLessThan(row("hellebore").size());
  }

  private CommonnessRow row(String word) {
    return rows.stream().filter(row -> row.word().equals(word)).findFirst().orElseThrow();
  }
}
