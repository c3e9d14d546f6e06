package org.hedgerow.sentences.compose;

import static java.util.stream.Collectors.averagingDouble;
import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Chooses the most plausible sentences that don't resemble each other: each word and each pattern
 * that was used makes the next sentence with it less welcome. The weights were set by reading
 * sentences for some twenty values, none of them among those that were judged.
 */
final class Ranking {

  private static final double SAME_WORD = 0.2;
  private static final double SAME_PATTERN = 0.1;

  /** What somebody wrote makes more sense than what chance made of classes. */
  private static final double WRITTEN = 1;

  /** Two fillings of a scene are one sentence to those who read them. */
  private static final double SAME_SCENE = 0.8;

  /** Statements are met oftener than questions. */
  private static final double QUESTION = 0.15;

  private static final double SIGHT_WORD = 0.02;

  /**
   * @param score how much more plausible it is than others of its pattern: short words that hold a
   *     pattern together must not decide between patterns
   */
  private record Scored(Candidate candidate, double plausibility, double score) {

    Scored above(double usual) {
      return new Scored(candidate, plausibility, score - usual);
    }

    String pattern() {
      return candidate.pattern();
    }
  }

  private final Plausibility plausibility;

  Ranking(Plausibility plausibility) {
    this.plausibility = plausibility;
  }

  /** The best first. */
  List<ComposedSentence> best(List<Candidate> candidates, int count) {
    List<Scored> left = new ArrayList<>(compared(candidates.stream().map(this::score).toList()));
    Map<String, Integer> used = new HashMap<>();
    List<ComposedSentence> chosen = new ArrayList<>();
    while (chosen.size() < count && !left.isEmpty()) {
      Scored best = mostWelcome(left, used).orElseThrow();
      left.remove(best);
      chosen.add(
          new ComposedSentence(
              best.candidate().text(), best.candidate().kind(), best.plausibility()));
      best.candidate().phrase().lemmas().forEach(lemma -> used.merge(lemma, 1, Integer::sum));
      used.merge(best.candidate().pattern(), 1, Integer::sum);
    }
    return chosen;
  }

  private static List<Scored> compared(List<Scored> all) {
    Map<String, Double> usual =
        all.stream().collect(groupingBy(Scored::pattern, averagingDouble(Scored::plausibility)));
    return all.stream().map(each -> each.above(usual.getOrDefault(each.pattern(), 0.0))).toList();
  }

  private Scored score(Candidate candidate) {
    double perWord = plausibility.perWord(candidate.words());
    long sight = candidate.phrase().pieces().stream().filter(PhraseWord::sight).count();
    double asked = candidate.kind() == SentenceKind.QUESTION ? QUESTION : 0;
    double written = candidate.written() ? WRITTEN : 0;
    return new Scored(candidate, perWord, perWord - SIGHT_WORD * sight - asked + written);
  }

  private static Optional<Scored> mostWelcome(List<Scored> left, Map<String, Integer> used) {
    return left.stream().max(Comparator.comparingDouble(each -> welcome(each, used)));
  }

  private static double welcome(Scored scored, Map<String, Integer> used) {
    int words =
        scored.candidate().phrase().lemmas().stream()
            .mapToInt(lemma -> used.getOrDefault(lemma, 0))
            .sum();
    int pattern = used.getOrDefault(scored.candidate().pattern(), 0);
    double alike = scored.candidate().written() ? SAME_SCENE : SAME_PATTERN;
    return scored.score() - SAME_WORD * words - alike * pattern;
  }
}
