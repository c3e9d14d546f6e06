package org.hedgerow.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** How long something took, each time. Safe for several threads. */
public final class Times {
  private final List<Long> nanoseconds = Collections.synchronizedList(new ArrayList<>());

  public void add(long nanosecondsTaken) {
    nanoseconds.add(nanosecondsTaken);
  }

  public int count() {
    return nanoseconds.size();
  }

  /** In milliseconds. */
  public double at(double quantile) {
    List<Long> sorted;
    synchronized (nanoseconds) {
      sorted = nanoseconds.stream().sorted().toList();
    }
    return sorted.isEmpty()
        ? 0
        : sorted.get((int) Math.min(sorted.size() - 1L, (long) (sorted.size() * quantile))) / 1e6;
  }

  @Override
  public String toString() {
    return "%6d times, p50 %.2f ms, p95 %.2f ms, p99 %.2f ms, most %.2f ms"
        .formatted(count(), at(0.5), at(0.95), at(0.99), at(1));
  }
}
