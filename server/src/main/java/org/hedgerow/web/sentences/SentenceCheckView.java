package org.hedgerow.web.sentences;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.hedgerow.sentences.JudgedToken;
import org.hedgerow.sentences.JudgedWord;
import org.hedgerow.sentences.SentenceCheck;
import org.hedgerow.sentences.SentenceFinding;
import org.hedgerow.sentences.TargetLetters;
import org.hedgerow.sentences.TokenJudgement;
import org.hedgerow.web.view.CheckView;

/** What can be said of a sentence, word by word. */
record SentenceCheckView(
    String verdict, int targets, List<TokenView> tokens, List<FindingView> findings) {

  /**
   * @param judgement left out for marks and what is no word
   * @param letters those of the phonogram in a target, from 0; left out for others
   * @param replacements words that could stand in the place of a blocked one
   */
  record TokenView(
      String text,
      int start,
      int end,
      Optional<String> judgement,
      Optional<String> verdict,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Integer> letters,
      @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean guessed,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<CheckView.FindingView> findings,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> replacements) {}

  /** About the sentence as a whole, or a part of it. */
  record FindingView(String code, int start, int end, String message) {

    public static FindingView of(SentenceFinding finding) {
      return new FindingView(
          finding.code().label(), finding.start(), finding.end(), finding.message());
    }
  }

  static SentenceCheckView of(SentenceCheck check, TargetLetters letters) {
    return new SentenceCheckView(
        check.verdict().label(),
        check.targets(),
        check.tokens().stream().map(token -> token(token, letters)).toList(),
        check.findings().stream().map(FindingView::of).toList());
  }

  private static TokenView token(JudgedToken token, TargetLetters letters) {
    Optional<JudgedWord> word = token.word();
    return new TokenView(
        token.token().text(),
        token.token().start(),
        token.token().end(),
        word.map(each -> each.judgement().label()),
        word.map(each -> each.verdict().label()),
        word.filter(each -> each.judgement() == TokenJudgement.TARGET)
            .map(each -> letters.of(each.word()))
            .orElse(List.of()),
        word.map(JudgedWord::guessed).orElse(false),
        word.map(JudgedWord::findings).orElse(List.of()).stream()
            .map(CheckView.FindingView::of)
            .toList(),
        token.replacements());
  }
}
