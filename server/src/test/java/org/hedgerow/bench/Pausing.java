package org.hedgerow.bench;

import java.util.concurrent.ThreadLocalRandom;

/** People think between two clicks, and don't begin at the same moment. */
final class Pausing {
  private Pausing() {}

  static void first(long milliseconds) {
    sleep((long) (milliseconds * ThreadLocalRandom.current().nextDouble()));
  }

  static void between(long milliseconds) {
    sleep((long) (milliseconds * (0.5 + ThreadLocalRandom.current().nextDouble())));
  }

  private static void sleep(long milliseconds) {
    try {
      Thread.sleep(milliseconds);
    } catch (InterruptedException interruption) {
      throw new IllegalStateException(interruption);
    }
  }
}
