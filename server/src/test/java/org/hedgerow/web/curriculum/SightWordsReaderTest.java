package org.hedgerow.web.curriculum;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.SightWordsReader;
import org.hedgerow.web.query.ValidationErrors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which words children know as wholes, as people say it. */
class SightWordsReaderTest {
  private static final SightWordSets SETS =
      new SightWordSets(
          List.of(
              new SightWords("dolch", "Dolch", List.of("the", "said"), ""),
              new SightWords("first", "First", List.of("the"), "")));

  private final ValidationErrors errors = ValidationErrors.ofBody();
  private final SightWordsReader reader = new SightWordsReader(SETS, errors);

  @Test
  void withoutANameTheFirstSetCounts() {
    assertThat(reader.read("sightWords", Optional.empty()))
        .containsExactlyInAnyOrder("the", "said");
    assertThat(reader.chosen("sightWords", Optional.empty())).contains(SETS.all().get(0));
    assertThat(errors.isEmpty()).isTrue();
  }

  @Test
  void aNameIsThatSetAndNoneIsNoWords() {
    assertThat(reader.read("sightWords", Optional.of(" first "))).containsExactly("the");
    assertThat(reader.read("sightWords", Optional.of("none"))).isEmpty();
    assertThat(errors.isEmpty()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          dolsh       | dolch
          FIRST       | first
          non         | none
          ''          | There are dolch, first, none
          dolch,first | There are dolch, first, none
          <b>         | There are dolch, first, none
          """)
  void saysWhatThereIs(String typed, String advice) {
    assertThat(reader.read("sightWords", Optional.of(typed))).isEmpty();
    assertThat(errors.list())
        .singleElement()
        .satisfies(
            error -> {
              assertThat(error.type()).isEqualTo(ProblemType.INVALID_BODY);
              assertThat(error.parameter()).isEqualTo("sightWords");
              assertThat(error.message()).contains(advice);
            });
  }

  @Test
  void aCentreWithoutSetsHasNoSightWords() {
    assertThat(new SightWordsReader(SightWordSets.NONE, errors).read("x", Optional.empty()))
        .isEmpty();
  }
}
