package org.hedgerow.seed;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.SentenceStandard;
import org.junit.jupiter.api.Test;

/** The sentences of the first edition. */
class StarterSentencesTest {

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
        SentenceStandard.DEFAULT_TARGETS,
        SentenceStandard.DEFAULT_WORDS);
  }

  @Test
  void eachOfTheFortyCommonestValuesHasThree() {
    Map<Correspondence, Long> counts =
        all.stream().collect(groupingBy(Sentence::value, counting()));
    assertThat(CommonestValues.all())
        .hasSize(40)
        .allSatisfy(value -> assertThat(counts.getOrDefault(value, 0L)).isGreaterThan(2));
  }

  @Test
  void noneComesTwice() {
    assertThat(all).extracting(Sentence::text).doesNotHaveDuplicates();
    assertThat(all).extracting(Sentence::accents).containsOnly(List.of("en-US", "en-GB"));
    assertThat(Set.copyOf(all)).hasSize(all.size());
  }
}
