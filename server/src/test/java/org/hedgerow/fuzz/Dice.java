package org.hedgerow.fuzz;

import java.util.List;
import java.util.Random;

/** Choices that come out the same from the same seed and number. Not thread-safe. */
final class Dice {
  private static final long SCATTER = 0x9E3779B97F4A7C15L;

  private final Random random;

  /**
   * @param number of the request within the run
   */
  Dice(long seed, long number) {
    this.random = new Random((seed ^ SCATTER) + number * SCATTER);
  }

  /** From 0 up to but without a bound. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  boolean percent(int chance) {
    return random.nextInt(100) < chance;
  }

  <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
