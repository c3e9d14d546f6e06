package org.hedgerow.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.junit.jupiter.api.Test;

/** The sight words that a new bank begins with. */
class SightWordsDataTest {
  private final SightWordSets sets = SeedCurriculum.sightWords(SeedLexicon.bundled());

  private List<String> words(String name) {
    return sets.named(name).orElseThrow().words();
  }

  /**
   * E. W. Dolch, "A Basic Sight Vocabulary", The Elementary School Journal 36(6), 1936, has 220
   * words and no nouns; his 95 nouns are a list of their own. From memory.
   */
  @Test
  void dolchHas220WordsAndNoNouns() {
    assertThat(sets.usual()).map(SightWords::name).contains("dolch");
    assertThat(words("dolch"))
        .hasSize(220)
        .isSorted()
        .contains("the", "a", "i", "to", "said", "was", "does", "don't", "laugh", "together")
        .doesNotContain("dog", "cat", "mother", "school", "boat");
  }

  @Test
  void theFirstWordsAreAPartOfThem() {
    assertThat(words("first")).hasSize(40).isSorted().contains("i", "the", "little", "where");
    assertThat(words("dolch")).containsAll(words("first"));
  }

  /** Whatever has no apostrophe is found in the bank, so that its phonograms can be shown. */
  @Test
  void theBankKnowsThem() {
    assertThat(words("dolch"))
        .filteredOn(word -> SeededLexicon.get().word(word).isEmpty())
        .containsExactly("don't");
  }
}
