package org.hedgerow.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hedgerow.reading.Verdict;
import org.hedgerow.review.Content;
import org.hedgerow.review.ContributionFinding;
import org.hedgerow.review.ContributionKind;
import org.hedgerow.review.NewSentence;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;

class SentenceVerdictTest {

  private static ContributionFinding remark(String code) {
    return new ContributionFinding(code, "", List.of(), "…");
  }

  private static Verdict verdict(ContributionKind kind, String... codes) {
    return DraftVerdictMaker.verdict(
        kind, List.of(codes).stream().map(each -> remark(each)).toList());
  }

  @Test
  void aSentenceFailsByWhatIsSaidOfTheWhole() {
    assertThat(verdict(ContributionKind.SENTENCE)).isEqualTo(Verdict.PASS);
    assertThat(verdict(ContributionKind.SENTENCE, "no-capital")).isEqualTo(Verdict.LOOK);
    assertThat(verdict(ContributionKind.SENTENCE, "no-capital", "too-few-targets"))
        .isEqualTo(Verdict.FAIL);
    assertThat(verdict(ContributionKind.SENTENCE, "blocked-words", "irregular"))
        .isEqualTo(Verdict.FAIL);
  }

  @Test
  void aNameFailsAsAWordAndIsLookedAtInASentence() {
    assertThat(verdict(ContributionKind.SENTENCE, "name")).isEqualTo(Verdict.LOOK);
    assertThat(verdict(ContributionKind.WORD, "name")).isEqualTo(Verdict.FAIL);
  }

  @Test
  void sentencesAreJudgedForTheValueTheyName() {
    Content content = Content.of(new NewSentence("A toad.", "oa", 1, List.of("en-US")));
    assertThat(QueueRow.isJudged(content.proposal().kind())).isTrue();
    assertThat(new DraftVerdictMaker(SeededLexicon.get()).headline(content, Verdict.FAIL))
        .isEqualTo("It doesn’t pass for oa as in boat");
  }
}
