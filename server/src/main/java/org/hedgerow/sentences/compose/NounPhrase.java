package org.hedgerow.sentences.compose;

import java.util.ArrayList;
import java.util.List;

/**
 * Somebody or something, in words.
 *
 * @param nouns what is named; none where a pronoun stands
 * @param told what is said of them
 */
record NounPhrase(Phrase phrase, Agreement agreement, List<Noun> nouns, List<Adjective> told) {

  /** The size of people, whom pronouns stand for. */
  private static final int PERSON = 4;

  NounPhrase {
    nouns = List.copyOf(nouns);
    told = List.copyOf(told);
  }

  /** The size of the biggest. */
  int size() {
    return nouns.stream().mapToInt(Noun::size).max().orElse(PERSON);
  }

  boolean names(Noun noun) {
    return nouns.contains(noun);
  }

  /** Both, joined by <em>and</em>. */
  NounPhrase and(Piece and, NounPhrase other) {
    return new NounPhrase(
        phrase.then(and).then(other.phrase),
        Agreement.OTHER,
        joined(nouns, other.nouns),
        joined(told, other.told));
  }

  private static <T> List<T> joined(List<T> some, List<T> others) {
    List<T> both = new ArrayList<>(some);
    both.addAll(others);
    return both;
  }
}
