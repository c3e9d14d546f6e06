package org.hedgerow.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentences that somebody proposes, judged by the rules of the trade: common practice. */
class ExaminedSentencesTest {

  private static Examination examine(String text) {
    Lexicon lexicon = SeededLexicon.get();
    BankSnapshot snapshot =
        new BankSnapshot(
            lexicon, lexicon::word, each -> Optional.empty(), each -> Optional.empty());
    Content content = Content.of(new NewSentence(text, "oa", 1, List.of("en-US", "en-GB")));
    assertThat(content.errors(snapshot)).isEmpty();
    return new Examiner(lexicon).examine(content, snapshot);
  }

  private static List<String> codes(String text) {
    return examine(text).remarks().stream().map(ContributionFinding::code).toList();
  }

  @Test
  void aGoodSentenceHasNoRemarksAndServesItsValue() {
    Examination examination = examine("The goat sat on the boat by the road.");
    assertThat(examination.remarks()).isEmpty();
    assertThat(examination.serves()).containsExactly("oa 1");
  }

  @Test
  void aBlockedWordIsNamedWithTheReason() {
    Examination examination = examine("The goat sat on the boat by the green roads and trees.");
    assertThat(examination.remarks())
        .anySatisfy(
            remark -> {
              assertThat(remark.code()).isEqualTo("blocked-words");
              assertThat(remark.message()).contains("trees").doesNotContain("goat");
            })
        .anySatisfy(
            remark -> {
              assertThat(remark.code()).isEqualTo("second-phonogram");
              assertThat(remark.accent()).isEqualTo("en-GB");
              assertThat(remark.message()).startsWith("trees: ");
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          The goat sat on the bed.                          | too-few-targets
          the goat sat on the boat by the road.             | no-capital
          The goat sat on the boat by the road              | no-final-mark
          The goat sat on the boat by the road 2.           | number
          The goat and the toad sat on the boat by the road.| too-long
          The goat sat on the boat by the road 🐐.          | unreadable
          !!!                                               | no-words
          """)
  void theFormIsRemarkedOn(String text, String code) {
    assertThat(codes(text)).contains(code);
  }

  @Test
  void whatIsFoundOfWordsThatPassIsNotTold() {
    assertThat(codes("The toad and the goat got toast.")).isEmpty();
  }
}
