package org.hedgerow.sentences.compose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Makes sentences that pass by construction: every word that is put in one has been judged before.
 * Many are made by chance, within what is known of the world; the most plausible are kept. The same
 * order gives the same sentences. Immutable.
 */
public final class Composer {

  /** How many are made for each that is wanted, so that there is something to choose from. */
  private static final int CHOICE = 25;

  private static final int LEAST_CHOICE = 300;

  /** When to stop trying where words are few. */
  private static final int TRIES = 40_000;

  private final Knowledge knowledge;
  private final Ranking ranking;

  public Composer(Knowledge knowledge, Plausibility plausibility) {
    this.knowledge = knowledge;
    this.ranking = new Ranking(plausibility);
  }

  /**
   * @param uses what a word in lower case is good for in these sentences
   * @param startsWithVowel whether a word is said with a vowel first, so that it takes <em>an</em>
   */
  public Drafts compose(
      DraftOrder order, Function<String, Use> uses, Predicate<String> startsWithVowel) {
    Pantry pantry = new Pantry(knowledge, uses, order.mustUse());
    Patterns patterns =
        new Patterns(pantry, startsWithVowel, new Chance(order.seed()), order.kinds());
    return new Drafts(
        ranking.best(candidates(order, patterns), order.count()), pantry.targetLemmas());
  }

  private static List<Candidate> candidates(DraftOrder order, Patterns patterns) {
    int wanted = Math.max(LEAST_CHOICE, CHOICE * order.count());
    Map<String, Candidate> found = new LinkedHashMap<>();
    for (int tried = 0; tried < TRIES + wanted && found.size() < wanted; tried++) {
      patterns
          .next()
          .filter(candidate -> isInOrder(candidate.phrase(), order))
          .ifPresent(candidate -> found.putIfAbsent(candidate.text(), candidate));
    }
    return List.copyOf(found.values());
  }

  private static boolean isInOrder(Phrase phrase, DraftOrder order) {
    return phrase.targets() >= order.minimumTargets()
        && phrase.length() <= order.maximumWords()
        && !phrase.repeats()
        && holdsAll(phrase, order.mustUse());
  }

  private static boolean holdsAll(Phrase phrase, Set<String> words) {
    return words.stream().allMatch(word -> holds(phrase, word));
  }

  private static boolean holds(Phrase phrase, String word) {
    return phrase.pieces().stream()
        .anyMatch(piece -> piece.text().equals(word) || piece.lemma().equals(word));
  }
}
