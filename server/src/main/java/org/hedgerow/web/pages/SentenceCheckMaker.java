package org.hedgerow.web.pages;

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
import org.hedgerow.web.query.QueryString;

/** Puts a judged sentence on a page. */
final class SentenceCheckMaker {

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
        question.value().isEmpty()
            ? ""
            : " The phonogram comes up %s.".formatted(times(check.targets()));
    return switch (check.verdict()) {
      case PASS -> "You can use it." + count;
      case LOOK -> "Look at it once more." + count;
      case FAIL -> "Not yet." + count;
    };
  }

  private static String times(int count) {
    return count == 0 ? "never" : count == 1 ? "once" : count == 2 ? "twice" : count + " times";
  }

  private static boolean isTrouble(JudgedToken token) {
    return token.word().filter(word -> word.verdict() != Verdict.PASS).isPresent();
  }

  private SentenceCheckPage.Trouble trouble(String text, JudgedToken token) {
    return new SentenceCheckPage.Trouble(
        token.token().text(),
        token.word().map(JudgedWord::findings).orElse(List.of()).stream()
            .map(Finding::message)
            .distinct()
            .limit(3)
            .toList(),
        token.replacements().stream().map(word -> instead(text, token, word)).toList());
  }

  private Fit instead(String text, JudgedToken token, String word) {
    Rewording rewording =
        new Rewording(new Articles(question.lexicon(), question.accents().first().tag()));
    return new Fit(word, address(rewording.of(text, token.token(), word)));
  }

  private String address(String text) {
    Map<String, String> asked = new LinkedHashMap<>();
    asked.put("text", text);
    question.value().ifPresent(value -> asked.put(SentenceQuestion.FOR, value.label()));
    if (!question.accents().parameter().isEmpty()) {
      asked.put(ChosenAccents.PARAMETER, question.accents().parameter());
    }
    if (!question.taught().isEmpty()) {
      asked.put(SentenceQuestion.TAUGHT, question.taught());
    }
    question
        .parameters()
        .text(SentenceQuestion.SIGHT_WORDS)
        .ifPresent(name -> asked.put(SentenceQuestion.SIGHT_WORDS, name));
    asked.put(SentenceQuestion.LONGEST, String.valueOf(question.longest()));
    return "/sentences/check?" + new QueryString(asked);
  }
}
