package org.hedgerow.sentences.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A scene with what can be read of it.
 *
 * @param name by which sentences of the same scene know each other
 * @param slots what may stand in each place; each at least one
 */
record ReadableScene(String name, SentenceKind kind, List<List<Phrase>> slots) {

  ReadableScene {
    slots = slots.stream().map(List::copyOf).toList();
  }

  /**
   * @param words reads words that follow each other; empty if one of them can't be read
   * @return nothing if no choice of some place can be read
   */
  static Optional<ReadableScene> of(
      Scene scene, String name, Function<List<String>, Optional<Phrase>> words) {
    List<List<Phrase>> slots = new ArrayList<>();
    for (List<List<String>> choices : scene.slots()) {
      List<Phrase> readable =
          choices.stream().flatMap(choice -> words.apply(choice).stream()).toList();
      if (readable.isEmpty()) {
        return Optional.empty();
      }
      slots.add(readable);
    }
    return Optional.of(new ReadableScene(name, scene.kind(), slots));
  }

  /** How often the phonogram can come up. */
  int mostTargets() {
    return slots.stream()
        .mapToInt(slot -> slot.stream().mapToInt(Phrase::targets).max().orElse(0))
        .sum();
  }

  /** One way to fill it, with <em>a</em> or <em>an</em> as it must be. */
  Candidate fill(SeededRandom random, Predicate<String> startsWithVowel) {
    Phrase filled = Phrase.EMPTY;
    for (List<Phrase> slot : slots) {
      filled = filled.then(random.among(slot).orElseThrow());
    }
    return new Candidate(filled.withArticles(startsWithVowel), kind, name, true);
  }
}
