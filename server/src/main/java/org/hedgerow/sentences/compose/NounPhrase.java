package org.hedgerow.sentences.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Somebody or something, in words.
 *
 * @param nouns what is named; none where a pronoun stands
 * @param told what is said of them
 */
record NounPhrase(Phrase phrase, Agreement agreement, List<Noun> nouns, List<Adjective> told) {

  /** The size of people, whom pronouns stand for. */
  private static final int PERSON = 4;

  private static final Map<String, String> OWNERS =
      Map.of("I", "my", "you", "your", "he", "his", "she", "her", "we", "our", "they", "their");

  private static final Set<String> SPEAKERS = Set.of("I", "we");

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

  /** What is theirs, as in <em>my</em>; empty unless it is a pronoun. */
  String owner() {
    return nouns.isEmpty() ? OWNERS.getOrDefault(phrase.pieces().get(0).text(), "") : "";
  }

  /** Whether it is you, whom one doesn't tell what you want or did. */
  boolean isSpokenTo() {
    return nouns.isEmpty() && phrase.pieces().get(0).text().equals("you");
  }

  /** Whether it is I or we, of whom one doesn't ask what they did. */
  boolean isSpeaker() {
    return nouns.isEmpty() && SPEAKERS.contains(phrase.pieces().get(0).text());
  }

  /** Both, joined by <em>and</em>. */
  NounPhrase and(PhraseWord and, NounPhrase other) {
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
