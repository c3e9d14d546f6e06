package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The candidate words for one slot of a sentence.
 *
 * @param wanted those that somebody asked for
 * @param targets those with the phonogram
 * @param plain the others that can be read
 */
record WordPool<T>(List<T> wanted, List<T> targets, List<T> plain) {

  /** How often a wanted word is taken where there is one. */
  private static final double WANTED_FIRST = 0.7;

  /** How often a target is taken where there is one: a sentence needs three. */
  private static final double TARGET_FIRST = 0.8;

  /** How often another is tried when one doesn't fit. */
  private static final int TRIES = 6;

  WordPool {
    wanted = List.copyOf(wanted);
    targets = List.copyOf(targets);
    plain = List.copyOf(plain);
  }

  static <T> WordPool<T> empty() {
    return new WordPool<>(List.of(), List.of(), List.of());
  }

  /**
   * @param piece the word that one of them is
   * @param wanted whether somebody asked for a word
   */
  static <T> WordPool<T> of(
      List<T> all, Function<T, PhraseWord> piece, Predicate<PhraseWord> wanted) {
    return new WordPool<>(
        all.stream().filter(each -> wanted.test(piece.apply(each))).toList(),
        all.stream().filter(each -> piece.apply(each).target()).toList(),
        all.stream().filter(each -> !piece.apply(each).target()).toList());
  }

  boolean isEmpty() {
    return targets.isEmpty() && plain.isEmpty();
  }

  WordPool<T> where(Predicate<T> fits) {
    return new WordPool<>(
        wanted.stream().filter(fits).toList(),
        targets.stream().filter(fits).toList(),
        plain.stream().filter(fits).toList());
  }

  Stream<T> all() {
    return Stream.concat(targets.stream(), plain.stream());
  }

  /** Any of them; empty if there is none. */
  Optional<T> draw(SeededRandom random) {
    return draw(random, any -> true);
  }

  /** One that fits; empty if none is met in a few tries. */
  Optional<T> draw(SeededRandom random, Predicate<T> fits) {
    for (int tried = 0; tried < TRIES; tried++) {
      Optional<T> drawn = random.among(side(random)).filter(fits);
      if (drawn.isPresent()) {
        return drawn;
      }
    }
    return Optional.empty();
  }

  private List<T> side(SeededRandom random) {
    if (!wanted.isEmpty() && random.of(WANTED_FIRST)) {
      return wanted;
    }
    if (targets.isEmpty() || plain.isEmpty()) {
      return targets.isEmpty() ? plain : targets;
    }
    return random.of(TARGET_FIRST) ? targets : plain;
  }
}
