package org.hedgerow.bench;

import java.time.Duration;
import java.util.Map;

/** Prints the figures. */
record ReviewReport(
    Map<String, Times> idle,
    Map<String, Times> loaded,
    ReviewRecord record,
    Duration duration,
    ReviewClient client) {
  void print() {
    idle.forEach((name, times) -> print(name, times, loaded.getOrDefault(name, new Times())));
    System.out.println("writes    " + record.writes);
    System.out.println("queue     " + record.queues);
    System.out.println("decisions " + record.decisions);
    System.out.println("on second " + record.lag);
    System.out.printf(
        "%.0f writes and decisions a second; %d contributions, %d decisions, %d refused, %d too late, %d failures%n",
        (record.writes.count() + record.decisions.count()) / (double) duration.toSeconds(),
        record.written.size(),
        record.decided.size(),
        record.refused.get(),
        record.conflicts.get(),
        client.failures());
    client
        .get("/metrics", "")
        .body()
        .lines()
        .filter(line -> line.startsWith("jvm_memory_used_bytes") && line.contains("heap"))
        .forEach(System.out::println);
  }

  private static void print(String name, Times idle, Times loaded) {
    double times = loaded.at(0.95) / idle.at(0.5);
    System.out.printf("%-10s idle   %s%n", name, idle);
    System.out.printf(
        "%-10s loaded %s: p95 is %.1f × the idle median%s%n",
        name, loaded, times, times > 3 ? ", MISSED" : "");
  }

  boolean isWithoutFailures() {
    return client.failures() == 0;
  }
}
