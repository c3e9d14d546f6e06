package org.hedgerow.web.curriculum;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.hedgerow.reading.SightWordSets;
import org.hedgerow.reading.SightWords;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Faults;
import org.hedgerow.web.query.SightWordsReader;
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

  private final Faults faults = Faults.ofBody();
  private final SightWordsReader reader = new SightWordsReader(SETS, faults);

  @Test
  void withoutANameTheFirstSetCounts() {
    assertThat(reader.read("sightWords", Optional.empty()))
        .containsExactlyInAnyOrder("the", "said");
    assertThat(reader.chosen("sightWords", Optional.empty())).contains(SETS.all().get(0));
    assertThat(faults.isEmpty()).isTrue();
  }

  @Test
  void aNameIsThatSetAndNoneIsNoWords() {
    assertThat(reader.read("sightWords", Optional.of(" first "))).containsExactly("the");
    assertThat(reader.read("sightWords", Optional.of("none"))).isEmpty();
    assertThat(faults.isEmpty()).isTrue();
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
    assertThat(faults.list())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.type()).isEqualTo(ProblemType.INVALID_BODY);
              assertThat(fault.parameter()).isEqualTo("sightWords");
              assertThat(fault.message()).contains(advice);
            });
  }

  @Test
  void aCentreWithoutSetsHasNoSightWords() {
    assertThat(new SightWordsReader(SightWordSets.NONE, faults).read("x", Optional.empty()))
        .isEmpty();
  }
}
