package org.hedgerow.sentences;

import java.util.List;
import org.hedgerow.reading.Finding;
import org.hedgerow.reading.Verdict;

/**
 * What was found of a word in a sentence.
 *
 * @param word in lower case
 * @param verdict {@code fail} where it is blocked, {@code look} where a person should look
 * @param findings why
 * @param guessed whether the bank does not hold it, so that its sounds are a guess
 */
public record JudgedWord(
    String word,
    TokenJudgement judgement,
    Verdict verdict,
    List<Finding> findings,
    boolean guessed) {

  public JudgedWord {
    findings = List.copyOf(findings);
  }
}
