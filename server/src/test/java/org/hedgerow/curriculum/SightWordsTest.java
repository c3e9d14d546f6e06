package org.hedgerow.curriculum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sets of words that children learn whole. */
class SightWordsTest {
  private static final SightWords FEW = set("few", "the", "don't");
  private static final SightWords MORE = set("more", "the", "said", "i");

  private static SightWords set(String name, String... words) {
    return new SightWords(name, "Some words", List.of(words), "");
  }

  @Test
  void theFirstCountsWhereNothingIsChosen() {
    SightWordSets sets = new SightWordSets(List.of(MORE, FEW));
    assertThat(sets.usual()).contains(MORE);
    assertThat(sets.usualWords()).containsExactlyInAnyOrder("the", "said", "i");
    assertThat(sets.named("few")).contains(FEW);
    assertThat(sets.named("none")).isEmpty();
    assertThat(SightWordSets.NONE.usualWords()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "The", "don’t", "'tis", "don't'", "two words", "x-ray", "café", "4"})
  void refusesWhatIsNoWord(String word) {
    assertThatThrownBy(() -> set("few", "the", word)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void refusesSetsThatCantBeToldApartOrChosen() {
    assertThatThrownBy(() -> set("none", "the")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> set("The", "the")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> set("few")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> set("few", "a", "a")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SightWordSets(List.of(FEW, FEW)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aSetThatChangesKeepsItsPlaceAndOthersAreLeftAlone() {
    Curriculum two = Curriculum.NONE.with(MORE).with(FEW);
    SightWords other = set("more", "was");
    assertThat(two.with(other).sightWords().all()).containsExactly(other, FEW);
    assertThat(two.withoutSightWords("more").sightWords().all()).containsExactly(FEW);
    assertThat(two.withoutRules("first").withoutSequence("pairs")).isEqualTo(two);
    assertThat(two.with(two.rules().all().get(0))).isEqualTo(two);
  }
}
