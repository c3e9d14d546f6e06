package org.hedgerow.faults;

import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ThreadLocalRandom;
import org.hedgerow.bench.Times;
import org.hedgerow.faults.FaultClient.Call;

/** Forty clients order sentences that nobody has ordered before, while others read lists. */
final class SentenceOrders implements Scenario {
  private static final int CLIENTS = 40;
  private static final double MAX = 3;

  private static final List<String> PHONOGRAMS =
      List.of("oa", "ee", "ai", "sh", "ch", "igh", "oo", "ar", "ou", "th");

  @Override
  public String name() {
    return "sentence-orders";
  }

  @Override
  public Result run(Ground ground) throws Exception {
    Duration duration = ground.lasting(Duration.ofSeconds(60), Duration.ofSeconds(20));
    try (ServerProcess server = ServerProcess.start(ground.withBank(name())).awaitReady();
        Load load = new Load(() -> List.of(server.address()), ground.crew())) {
      order(server, load);
      lists(server, load, Duration.ofSeconds(10));
      Times before = lists(server, load, Duration.ofSeconds(10));
      load.on(Collections.nCopies(CLIENTS, () -> orderOn(server, load)));
      Times during = lists(server, load, duration);
      load.stop();
      if (during.at(0.5) > MAX * before.at(0.5)) {
        load.tally()
            .trouble("a list takes %.1f ms and not %.1f".formatted(during.at(0.5), before.at(0.5)));
      }
      server.stop();
      return Result.of(
          name(),
          "%d clients order sentences for %d s".formatted(CLIENTS, duration.toSeconds()),
          load.tally(),
          Reckoning.NOTHING,
          "list p50 %.1f ms, before %.1f ms; %s"
              .formatted(during.at(0.5), before.at(0.5), load.tally()));
    }
  }

  private static Times lists(ServerProcess server, Load load, Duration duration) {
    Times times = new Times();
    long end = System.nanoTime() + duration.toNanos();
    while (System.nanoTime() < end) {
      long start = System.nanoTime();
      load.client().ask(server.address(), Call.get(Reader.PATHS.get(0), ""));
      times.add(System.nanoTime() - start);
      Writing.pause(20);
    }
    return times;
  }

  private static void orderOn(ServerProcess server, Load load) {
    while (!load.isOver()) {
      order(server, load);
    }
  }

  /** One order after the other, with pauses. */
  static void orderSlowly(ServerProcess server, Load load) {
    while (!load.isOver()) {
      order(server, load);
      Writing.pause(1000);
    }
  }

  private static void order(ServerProcess server, Load load) {
    ThreadLocalRandom random = ThreadLocalRandom.current();
    Map<String, Object> order =
        Map.of(
            "phonogram", PHONOGRAMS.get(random.nextInt(PHONOGRAMS.size())),
            "accents", List.of("en-US", "en-GB"),
            "count", 10,
            "seed", random.nextInt(1_000_000));
    load.client()
        .ask(server.address(), Call.write("POST", "/api/v1/sentence-drafts", "", "", 0, order))
        .filter(answer -> answer.statusCode() == 429)
        .ifPresent(answer -> Writing.pause(1000));
  }
}
