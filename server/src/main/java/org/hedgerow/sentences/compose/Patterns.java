package org.hedgerow.sentences.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The ways to build sentences, each as often as it should be tried. */
final class Patterns {

  private record Weighted(String name, SentenceKind kind, int weight, Pattern pattern) {}

  private final SeededRandom random;
  private final List<Weighted> lots;

  Patterns(
      ReadableWords readable,
      Predicate<String> startsWithVowel,
      Style style,
      SeededRandom random,
      Set<SentenceKind> kinds) {
    this.random = random;
    NounPhrases phrases = new NounPhrases(readable, startsWithVowel, style, random);
    Copula copula = new Copula(readable, random);
    Actions actions = new Actions(readable, phrases, copula, random);
    States states = new States(readable, phrases, copula, random);
    JoinedStatements joined = new JoinedStatements(readable, actions, random);
    this.lots =
        lots(
            List.of(
                new Weighted("action", SentenceKind.STATEMENT, 12, actions::statement),
                new Weighted("quality", SentenceKind.STATEMENT, 3, states::quality),
                new Weighted("place", SentenceKind.STATEMENT, 2, states::place),
                new Weighted("company", SentenceKind.STATEMENT, 2, states::company),
                new Weighted("joined", SentenceKind.STATEMENT, style.joined(), joined),
                new Weighted("action asked", SentenceKind.QUESTION, 2, actions::question),
                new Weighted("quality asked", SentenceKind.QUESTION, 1, states::qualityAsked),
                new Weighted("place asked", SentenceKind.QUESTION, 1, states::placeAsked),
                new Weighted("command", SentenceKind.COMMAND, 3, actions::command)),
            kinds);
  }

  private static List<Weighted> lots(List<Weighted> all, Set<SentenceKind> kinds) {
    List<Weighted> lots = new ArrayList<>();
    for (Weighted each : all) {
      for (int lot = 0; lot < each.weight() && kinds.contains(each.kind()); lot++) {
        lots.add(each);
      }
    }
    return List.copyOf(lots);
  }

  /** One more sentence, or none when chance leads nowhere. */
  Optional<Candidate> next() {
    return random
        .among(lots)
        .flatMap(
            lot ->
                lot.pattern()
                    .make()
                    .map(phrase -> new Candidate(phrase, lot.kind(), lot.name(), false)));
  }
}
