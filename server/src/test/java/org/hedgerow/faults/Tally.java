package org.hedgerow.faults;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Counts the answers of a scenario, and watches for those that came too late or not at all, and for
 * those that no fault excuses. Thread-safe.
 */
final class Tally {
  /** No request may take longer, whatever happens. */
  static final Duration MAX_LENGTH = Duration.ofSeconds(5);

  private final Map<Integer, Integer> statuses = new TreeMap<>();
  private final Map<String, Integer> troubles = new TreeMap<>();
  private Duration slowest = Duration.ZERO;
  private int gone;

  /**
   * @param waits whether the answer says when to try again ({@code Retry-After})
   */
  synchronized void answered(String request, int status, boolean waits, Duration time) {
    statuses.merge(status, 1, Integer::sum);
    took(request, time);
    boolean forAWhile = status == 503 || status == 507;
    if (status >= 500 && !forAWhile) {
      trouble("%d at %s".formatted(status, request));
    } else if ((forAWhile || status == 429) && !waits) {
      trouble("%d without Retry-After at %s".formatted(status, request));
    }
  }

  /** The connection broke or none could be had, which is no wonder while a server is killed. */
  synchronized void gone(String request, Duration time) {
    gone++;
    took(request, time);
  }

  synchronized void took(String request, Duration time) {
    slowest = time.compareTo(slowest) > 0 ? time : slowest;
    if (time.compareTo(MAX_LENGTH) > 0) {
      trouble("more than %d s at %s".formatted(MAX_LENGTH.toSeconds(), request));
    }
  }

  synchronized void trouble(String what) {
    troubles.merge(what, 1, Integer::sum);
  }

  synchronized long requests() {
    return statuses.values().stream().mapToLong(Integer::longValue).sum() + gone;
  }

  synchronized int count(int status) {
    return statuses.getOrDefault(status, 0);
  }

  synchronized Duration slowest() {
    return slowest;
  }

  synchronized List<String> troubles() {
    List<String> all = new ArrayList<>();
    troubles.forEach((what, count) -> all.add(what + " (" + count + " ×)"));
    return all;
  }

  @Override
  public synchronized String toString() {
    return "%s, gone %d".formatted(statuses, gone);
  }
}
