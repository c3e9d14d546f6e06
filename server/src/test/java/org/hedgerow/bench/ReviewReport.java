package org.hedgerow.bench;

import java.time.Duration;
import java.util.Map;

/** Prints the figures. */
record ReviewReport(
    String title,
    Map<String, Times> idle,
    Map<String, Times> loaded,
    ReviewRecord record,
    Duration duration,
    ReviewClient client) {
  void print() {
    System.out.println(title);
    idle.forEach((name, times) -> print(name, times, loaded.getOrDefault(name, new Times())));
    System.out.println("writes    " + record.times().writes);
    System.out.println("queue     " + record.times().queues);
    System.out.println("decisions " + record.times().decisions);
    System.out.println("on second " + record.times().lag);
    System.out.printf(
        "%.0f writes and decisions a second; %d contributions, %d decisions, %d refused, %d too late, %d failures%n",
        (record.times().writes.count() + record.times().decisions.count())
            / (double) duration.toSeconds(),
        record.written.size(),
        record.decided.size(),
        record.times().refused.get(),
        record.times().conflicts.get(),
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
}
