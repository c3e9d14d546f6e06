package org.hedgerow.faults;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Reads, sentences and writes for a long time in little memory, which mustn't be used up. */
final class Soak implements Scenario {
  private static final int SAMPLES = 10;
  private static final double MAX_GROWTH = 1.25;

  private final int heap;

  /**
   * @param heap in megabytes
   */
  Soak(int heap) {
    this.heap = heap;
  }

  @Override
  public String name() {
    return "soak-" + heap;
  }

  @Override
  public Result run(Ground ground) throws Exception {
    Duration duration = ground.options().soak();
    try (ServerProcess server =
            ServerProcess.startWithHeap(ground.withBank(name()), heap).awaitReady();
        Load load = new Load(() -> List.of(server.address()), ground.crew())) {
      load.write().read(6, true).on(List.of(() -> SentenceOrders.orderSlowly(server, load)));
      List<Memory> memory = new ArrayList<>();
      for (int sample = 0; sample < SAMPLES; sample++) {
        Writing.pause(duration.toMillis() / SAMPLES);
        memory.add(Memory.of(server.pid()));
        progress(sample + 1, SAMPLES);
      }
      load.stop();
      judge(memory, server, load.tally());
      Reckoning reckoning = new Auditor(server.address(), ground.crew(), load.ledger()).reckon();
      server.stop();
      return Result.of(
          name(),
          "-Xmx%dm for %d min: reads, sentences, writes".formatted(heap, duration.toMinutes()),
          load.tally(),
          reckoning,
          "heap after a collection %s MB; resident %s MB"
              .formatted(
                  memory.stream().map(Memory::heap).toList(),
                  memory.stream().map(Memory::resident).toList()));
    }
  }

  /** By the first samples, not all that is kept in memory has been asked for yet. */
  private static void judge(List<Memory> memory, ServerProcess server, Tally tally) {
    Memory settled = memory.get(SAMPLES / 3);
    Memory last = memory.get(SAMPLES - 1);
    if (last.heap() > settled.heap() * MAX_GROWTH
        || last.resident() > settled.resident() * MAX_GROWTH) {
      tally.trouble("memory grows from %s to %s".formatted(settled, last));
    }
    if (server.output().contains("OutOfMemoryError")) {
      tally.trouble("OutOfMemoryError");
    }
  }
}
