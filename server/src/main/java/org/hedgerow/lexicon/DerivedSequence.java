package org.hedgerow.lexicon;

import static java.util.stream.Collectors.toSet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Standard;

/**
 * The sequence that follows from the words: at each step comes the value whose yield (how many
 * words it makes readable, everything before it being known) times its {@link Regularity} is
 * greatest. A word counts one divided by its syllables, since beginners read short words. Values
 * that would make no word readable are left out.
 */
final class DerivedSequence {

  static final String NAME = "ours";

  private static final String TITLE = "Ours: most words first";
  private static final String NOTE =
      "Computed from the words of the bank: each step teaches the value that opens the most words"
          + " and is the most reliable. A word counts the less the more syllables it has.";

  private final Lexicon lexicon;
  private final String accent;
  private final Regularity regularity;

  /** Words that can be read in the end. */
  private final List<Waiting> waiting = new ArrayList<>();

  /**
   * @param missing the values that are not taught yet
   */
  private record Waiting(Set<Correspondence> missing, double worth) {}

  DerivedSequence(Lexicon lexicon, String accent) {
    this.lexicon = lexicon;
    this.accent = accent;
    this.regularity = new Regularity(lexicon, accent);
  }

  Sequence sequence() {
    readable().forEach(word -> waiting.add(new Waiting(needed(word), 1.0 / word.syllables())));
    List<List<Correspondence>> steps = new ArrayList<>();
    Map<Correspondence, Double> yields = yields();
    while (!yields.isEmpty()) {
      Correspondence next = best(yields);
      steps.add(List.of(next));
      waiting.forEach(each -> each.missing.remove(next));
      waiting.removeIf(each -> each.missing.isEmpty());
      yields = yields();
    }
    return new Sequence(NAME, TITLE, NOTE, steps);
  }

  private List<Word> readable() {
    Set<Correspondence> all =
        lexicon.catalogue().correspondences().stream()
            .filter(Correspondence::isTaught)
            .collect(toSet());
    return lexicon.find(WordQuery.of(accent, new Standard(ReadingRules.DEFAULT, Set.of(), all)));
  }

  private Set<Correspondence> needed(Word word) {
    Set<Correspondence> needed = new HashSet<>();
    word.saidIn(accent).stream()
        .flatMap(said -> said.alignment().stream())
        .flatMap(alignment -> alignment.spans().stream())
        .filter(DerivedSequence::mustBeTaught)
        .forEach(span -> needed.add(span.correspondence()));
    return needed;
  }

  static boolean mustBeTaught(Span span) {
    return span.correspondence().isTaught() && !Standard.basic().allows(span.realisation(), false);
  }

  /** How many words miss nothing but one value, by that value. */
  private Map<Correspondence, Double> yields() {
    Map<Correspondence, Double> yields = new HashMap<>();
    for (Waiting each : waiting) {
      if (each.missing.size() == 1) {
        yields.merge(each.missing.iterator().next(), each.worth, Double::sum);
      }
    }
    return yields;
  }

  private Correspondence best(Map<Correspondence, Double> yields) {
    Correspondence best = null;
    double most = -1;
    for (Correspondence value : lexicon.catalogue().correspondences()) {
      double worth = yields.getOrDefault(value, -1.0) * regularity.of(value);
      if (yields.containsKey(value) && worth > most) {
        best = value;
        most = worth;
      }
    }
    return java.util.Objects.requireNonNull(best);
  }
}
