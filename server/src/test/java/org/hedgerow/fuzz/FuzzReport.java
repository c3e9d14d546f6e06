package org.hedgerow.fuzz;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What came of a run: how many requests were answered how, and what was wrong. Thread-safe. */
public final class FuzzReport {
  private final Map<Integer, Integer> statuses = new TreeMap<>();
  private final Map<String, Fault> errors = new TreeMap<>();
  private final Map<String, Integer> times = new TreeMap<>();
  private Duration slowest = Duration.ZERO;
  private String slowestRequest = "";

  synchronized void add(HostileRequest request, Answer answer) {
    statuses.merge(answer.status(), 1, Integer::sum);
    if (answer.time().compareTo(slowest) > 0) {
      slowest = answer.time();
      slowestRequest = request.lines().get(0);
    }
  }

  /** Keeps the first error of each kind. */
  synchronized void add(Fault error) {
    errors.putIfAbsent(error.kind(), error);
    times.merge(error.kind(), 1, Integer::sum);
  }

  public synchronized int requests() {
    return statuses.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** How many answers had a status; 0 is none. */
  public synchronized Map<Integer, Integer> statuses() {
    return new TreeMap<>(statuses);
  }

  public synchronized Duration slowest() {
    return slowest;
  }

  /** One of each kind. */
  synchronized List<Fault> errors() {
    return List.copyOf(errors.values());
  }

  public synchronized List<String> kinds() {
    List<String> kinds = new ArrayList<>();
    times.forEach((kind, count) -> kinds.add("%6d × %s".formatted(count, kind)));
    return kinds;
  }

  @Override
  public synchronized String toString() {
    return "%,d requests, answered %s; slowest %d ms: %s"
        .formatted(
            requests(),
            statuses,
            slowest.toMillis(),
            slowestRequest.substring(0, Math.min(200, slowestRequest.length())));
  }
}
