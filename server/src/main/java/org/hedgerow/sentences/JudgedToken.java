package org.hedgerow.sentences;

import java.util.List;
import java.util.Optional;

/**
 * A token with what was found of it.
 *
 * @param word what was found of a word; empty for numbers, marks and what can't be read
 * @param replacements words that could stand in the place of a blocked one, or that are spelt much
 *     like one that the bank doesn't hold; the best first
 */
public record JudgedToken(Token token, Optional<JudgedWord> word, List<String> replacements) {

  public JudgedToken {
    replacements = List.copyOf(replacements);
  }

  boolean is(TokenJudgement judgement) {
    return word.map(each -> each.judgement() == judgement).orElse(false);
  }

  /** Whether it is a word that the bank does not hold. */
  public boolean isGuessed() {
    return word.map(JudgedWord::guessed).orElse(false);
  }
}
