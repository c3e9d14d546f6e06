package org.hedgerow.seed;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.SentenceStandard;
import org.junit.jupiter.api.Test;

/** The sentences of the first edition. */
class StarterSentencesTest {

  /** The forty values with most words in the default lists of both accents. */
  private static final String COMMONEST =
      "er1 y1 a-e1 le1 i-e1 sh1 o1 o-e1 ee1 ar1 ea1 ng1 oo1 ou1 ai1 ch1 or1 al1 or2 n1 ow1 ay1 oa1"
          + " e1 ow2 th1 ve1 aw1 el1 i1 tch1 ar2 oo2 y2 oi1 ur1 dge1 a3 ea2 igh1";

  private final Lexicon lexicon = SeededLexicon.get();
  private final List<Sentence> all = lexicon.sentences().all();

  @Test
  void eachPassesInItsAccentsByTheUsualRules() {
    assertThat(all)
        .allSatisfy(
            sentence ->
                assertThat(
                        new SentenceChecker(lexicon, standard(sentence))
                            .check(sentence.text())
                            .verdict())
                    .as(sentence.text())
                    .isEqualTo(Verdict.PASS));
  }

  private SentenceStandard standard(Sentence sentence) {
    return new SentenceStandard(
        Standard.of(sentence.value()),
        sentence.accents(),
        lexicon.plans().sightWords().usualWords(),
        SentenceStandard.USUAL_TARGETS,
        SentenceStandard.USUAL_WORDS);
  }

  @Test
  void eachOfTheFortyCommonestValuesHasThree() {
    Map<String, Long> counts =
        all.stream().collect(groupingBy(each -> each.value().label().replace(" ", ""), counting()));
    assertThat(Arrays.stream(COMMONEST.split(" ", -1)))
        .allSatisfy(value -> assertThat(counts.getOrDefault(value, 0L)).as(value).isGreaterThan(2));
  }

  @Test
  void noneComesTwice() {
    assertThat(all).extracting(Sentence::text).doesNotHaveDuplicates();
    assertThat(all).extracting(Sentence::accents).containsOnly(List.of("en-US", "en-GB"));
    assertThat(Set.copyOf(all)).hasSize(all.size());
  }
}
