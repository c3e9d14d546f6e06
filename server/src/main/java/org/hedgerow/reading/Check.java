package org.hedgerow.reading;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * The judgement of one word.
 *
 * @param guessed whether the pronunciation was guessed, because the bank does not hold the word
 */
public record Check(String word, Verdict verdict, List<Finding> findings, boolean guessed) {

  public Check {
    requireNonNull(word);
    requireNonNull(verdict);
    findings = List.copyOf(findings);
  }
}
