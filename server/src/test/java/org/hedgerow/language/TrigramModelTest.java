package org.hedgerow.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The model tells sense from nonsense: sentences made up here, each beside its nonsense. */
class TrigramModelTest {

  private static TrigramModel model;

  @BeforeAll
  static void load() {
    model = TrigramModel.bundled();
  }

  @ParameterizedTest
  @CsvSource({
    "the dog ran to the barn, the barn ran to the dog",
    "the boat can float, the float can boat",
    "he put the soap on the sink, he put the sink on the soap",
    "she had a bad cold, she had a bad hold"
  })
  void senseIsMorePlausibleThanNonsense(String sense, String nonsense) {
    assertThat(perWord(sense)).isGreaterThan(perWord(nonsense));
  }

  @Test
  void aProbabilityIsNeverMoreThanOne() {
    assertThat(perWord("the dog ran to the barn")).isBetween(-10.0, 0.0);
  }

  @Test
  void wordsThatItDoesNotKnowAreImplausibleButNoError() {
    assertThat(perWord("the xqzzv ran to the barn")).isLessThan(perWord("the dog ran to the barn"));
  }

  private static double perWord(String sentence) {
    return model.perWord(List.of(sentence.split(" ")));
  }
}
