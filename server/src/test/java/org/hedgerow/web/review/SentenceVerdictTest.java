package org.hedgerow.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hedgerow.reading.Verdict;
import org.hedgerow.review.Content;
import org.hedgerow.review.Kind;
import org.hedgerow.review.NewSentence;
import org.hedgerow.review.Remark;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;

class SentenceVerdictTest {

  private static Remark remark(String code) {
    return new Remark(code, "", List.of(), "…");
  }

  private static Verdict verdict(Kind kind, String... codes) {
    return SideMaker.verdict(kind, List.of(codes).stream().map(each -> remark(each)).toList());
  }

  @Test
  void aSentenceFailsByWhatIsSaidOfTheWhole() {
    assertThat(verdict(Kind.SENTENCE)).isEqualTo(Verdict.PASS);
    assertThat(verdict(Kind.SENTENCE, "no-capital")).isEqualTo(Verdict.LOOK);
    assertThat(verdict(Kind.SENTENCE, "no-capital", "too-few-targets")).isEqualTo(Verdict.FAIL);
    assertThat(verdict(Kind.SENTENCE, "blocked-words", "irregular")).isEqualTo(Verdict.FAIL);
  }

  @Test
  void aNameFailsAsAWordAndIsLookedAtInASentence() {
    assertThat(verdict(Kind.SENTENCE, "name")).isEqualTo(Verdict.LOOK);
    assertThat(verdict(Kind.WORD, "name")).isEqualTo(Verdict.FAIL);
  }

  @Test
  void sentencesAreJudgedForTheValueTheyName() {
    Content content = Content.of(new NewSentence("A toad.", "oa", 1, List.of("en-US")));
    assertThat(QueueRow.isJudged(content.proposal().kind())).isTrue();
    assertThat(new SideMaker(SeededLexicon.get()).headline(content, Verdict.FAIL))
        .isEqualTo("It doesn’t pass for oa as in boat");
  }
}
