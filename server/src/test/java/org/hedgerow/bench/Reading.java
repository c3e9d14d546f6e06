package org.hedgerow.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/** Readers of the kinds of reads that people wait for, one each. */
final class Reading {
  private static final List<String> WORDS = List.of("boat", "sheep", "chip", "rain", "night");
  private static final List<String> PHONOGRAMS = List.of("ee", "oa", "ai", "sh", "igh");
  private static final Map<String, IntFunction<String>> KINDS = kinds();

  private final ReviewClient client;
  private final long end;
  private final long pause;

  Reading(ReviewClient client, long end, long pause) {
    this.client = client;
    this.end = end;
    this.pause = pause;
  }

  private static Map<String, IntFunction<String>> kinds() {
    Map<String, IntFunction<String>> kinds = new LinkedHashMap<>();
    kinds.put("list", i -> "/api/v1/words?limit=50&phonogram=" + PHONOGRAMS.get(i % 5));
    kinds.put("word", i -> "/api/v1/words/" + WORDS.get(i % 5));
    kinds.put("phonograms", i -> "/api/v1/phonograms");
    kinds.put("page", i -> "/");
    return kinds;
  }

  Map<String, Times> run() throws InterruptedException {
    Map<String, Times> all = new LinkedHashMap<>();
    List<Thread> threads = new ArrayList<>();
    KINDS.forEach(
        (name, path) -> {
          Times times = new Times();
          all.put(name, times);
          Thread thread = new Thread(() -> read(path, times), "read-" + name);
          thread.start();
          threads.add(thread);
        });
    for (Thread each : threads) {
      each.join();
    }
    return all;
  }

  private void read(IntFunction<String> path, Times times) {
    for (int i = 0; System.nanoTime() < end; i++) {
      long start = System.nanoTime();
      int status = client.get(path.apply(i), "").statusCode();
      times.add(System.nanoTime() - start);
      if (status != 200) {
        throw new IllegalStateException(path.apply(i) + ": " + status);
      }
      Pausing.between(pause);
    }
  }
}
