package org.hedgerow.sentences.compose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** SeededRandom that comes out the same from the same seed. For one thread. */
final class SeededRandom {

  private final SplittableRandom random;

  SeededRandom(long seed) {
    this.random = new SplittableRandom(seed);
  }

  boolean of(double probability) {
    return random.nextDouble() < probability;
  }

  /** All of them in some order; a new list. */
  <T> List<T> shuffled(List<T> all) {
    List<T> shuffled = new ArrayList<>(all);
    for (int last = shuffled.size() - 1; last > 0; last--) {
      Collections.swap(shuffled, last, random.nextInt(last + 1));
    }
    return shuffled;
  }

  /** One of them, each as likely as any other; none of none. */
  <T> Optional<T> among(List<T> choices) {
    return choices.isEmpty()
        ? Optional.empty()
        : Optional.of(choices.get(random.nextInt(choices.size())));
  }
}
