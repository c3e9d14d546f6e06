package org.hedgerow.web.sentences;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.reading.Finding;
import org.hedgerow.reading.Verdict;
import org.hedgerow.sentences.Articles;
import org.hedgerow.sentences.JudgedToken;
import org.hedgerow.sentences.JudgedWord;
import org.hedgerow.sentences.Rewording;
import org.hedgerow.sentences.SentenceCheck;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.SentenceFinding;
import org.hedgerow.sentences.TargetLetters;
import org.hedgerow.web.page.FittingList;

/** Puts a judged sentence on a page. */
final class SentenceCheckMaker {

  private static final int MAX_REASONS = 3;

  private final SentenceQuestion question;

  SentenceCheckMaker(SentenceQuestion question) {
    this.question = question;
  }

  SentenceCheckPage empty() {
    return new SentenceCheckPage(question.fields(), "", "", "", List.of(), List.of(), List.of());
  }

  SentenceCheckPage of(String text) {
    SentenceCheck check =
        new SentenceChecker(question.lexicon(), question.sentenceStandard()).check(text);
    TargetLetters letters =
        new TargetLetters(
            question.lexicon(), question.standard(), question.accents().first().tag());
    return new SentenceCheckPage(
        question.fields(),
        text,
        verdict(check),
        check.verdict().label(),
        new SentenceWords(letters).of(check),
        check.findings().stream().map(SentenceFinding::message).distinct().toList(),
        check.tokens().stream()
            .filter(SentenceCheckMaker::isTrouble)
            .map(token -> trouble(text, token))
            .toList());
  }

  private String verdict(SentenceCheck check) {
    String count =
        question.value().isEmpty() ? "" : " The phonogram %s.".formatted(appears(check.targets()));
    return switch (check.verdict()) {
      case PASS -> "You can use it." + count;
      case LOOK -> "Look at it once more." + count;
      case FAIL -> "Not yet." + count;
    };
  }

  private static String appears(int count) {
    return switch (count) {
      case 0 -> "doesn’t appear";
      case 1 -> "appears once";
      case 2 -> "appears twice";
      default -> "appears %d times".formatted(count);
    };
  }

  private static boolean isTrouble(JudgedToken token) {
    return token.word().filter(word -> word.verdict() != Verdict.PASS).isPresent();
  }

  private SentenceCheckPage.Trouble trouble(String text, JudgedToken token) {
    return new SentenceCheckPage.Trouble(
        token.token().text(),
        reasons(token.word().map(JudgedWord::findings).orElse(List.of())),
        token.isGuessed() ? "Did you mean:" : "Try instead:",
        token.replacements().stream().map(word -> instead(text, token, word)).toList());
  }

  /** What two accents say alike of the same letters is told once. */
  private static List<String> reasons(List<Finding> findings) {
    Map<List<Object>, String> reasons = new LinkedHashMap<>();
    findings.forEach(
        each -> reasons.putIfAbsent(List.of(each.code(), each.letters()), each.message()));
    return reasons.values().stream().distinct().limit(MAX_REASONS).toList();
  }

  private FittingList instead(String text, JudgedToken token, String word) {
    Rewording rewording =
        new Rewording(new Articles(question.lexicon(), question.accents().first().tag()));
    return new FittingList(word, question.addressOf(rewording.of(text, token.token(), word)));
  }
}
