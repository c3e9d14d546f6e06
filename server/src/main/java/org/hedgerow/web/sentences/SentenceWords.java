package org.hedgerow.web.sentences;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.reading.Verdict;
import org.hedgerow.sentences.JudgedToken;
import org.hedgerow.sentences.JudgedWord;
import org.hedgerow.sentences.SentenceCheck;
import org.hedgerow.sentences.TargetLetters;
import org.hedgerow.sentences.Token;
import org.hedgerow.sentences.TokenJudgement;
import org.hedgerow.web.page.LetterRun;

/** Shows judged sentences: the phonogram red, each word with what it is. */
final class SentenceWords {

  private final TargetLetters letters;

  SentenceWords(TargetLetters letters) {
    this.letters = letters;
  }

  List<SentenceWord> of(SentenceCheck check) {
    List<SentenceWord> words = new ArrayList<>();
    int end = 0;
    for (JudgedToken token : check.tokens()) {
      words.add(word(token, token.token().start() > end));
      end = token.token().end();
    }
    return words;
  }

  private SentenceWord word(JudgedToken token, boolean spaced) {
    String text = token.token().text();
    if (token.word().isEmpty()) {
      boolean mark = token.token().kind() == Token.Kind.MARK;
      return new SentenceWord(
          LetterRun.of(text, List.of()),
          mark ? "mark" : "other",
          mark ? "" : "can’t be read",
          spaced);
    }
    JudgedWord word = token.word().get();
    boolean target = word.judgement() == TokenJudgement.TARGET;
    return new SentenceWord(
        LetterRun.of(text, target ? letters.of(word.word()) : List.of()),
        word.judgement().label(),
        caption(word),
        spaced);
  }

  private static String caption(JudgedWord word) {
    String caption =
        switch (word.judgement()) {
          case TARGET -> "phonogram";
          case PHONETIC -> "readable";
          case SIGHT_WORD -> "sight word";
          case TAUGHT -> "taught";
          case BLOCKED -> "not yet";
        };
    return word.verdict() == Verdict.LOOK ? caption + ", look" : caption;
  }
}
