package org.hedgerow.faults;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.atomic.AtomicInteger;
import org.hedgerow.faults.FaultClient.Call;

/** Readers of random editions beside approvals, which once stopped the server for good. */
final class OldEditions implements Scenario {
  private static final int READERS = 16;

  @Override
  public String name() {
    return "old-editions";
  }

  @Override
  public Result run(Ground ground) throws Exception {
    Duration duration = ground.lasting(Duration.ofMinutes(4), Duration.ofSeconds(60));
    try (ServerProcess server = ServerProcess.start(ground.withBank(name())).awaitReady();
        Load load = new Load(() -> List.of(server.address()), ground.crew())) {
      AtomicInteger newest = new AtomicInteger(1);
      load.write().on(Collections.nCopies(READERS, () -> read(server, load, newest)));
      Writing.pause(duration.toMillis());
      load.stop();
      Reckoning reckoning = new Auditor(server.address(), ground.crew(), load.ledger()).reckon();
      server.stop();
      return Result.of(
          name(),
          "%d readers of random editions beside approvals, for %d s"
              .formatted(READERS, duration.toSeconds()),
          load.tally(),
          reckoning,
          newest + " editions; " + load.tally());
    }
  }

  private static void read(ServerProcess server, Load load, AtomicInteger newest) {
    ThreadLocalRandom random = ThreadLocalRandom.current();
    while (!load.isOver()) {
      String path = Reader.PATHS.get(random.nextInt(3));
      String edition =
          random.nextInt(4) == 0 ? "" : "&edition=" + (1 + random.nextInt(newest.get()));
      load.client()
          .ask(server.address(), Call.get(path + edition, ""))
          .filter(answer -> answer.statusCode() == 200)
          .map(OldEditions::edition)
          .ifPresent(number -> newest.accumulateAndGet(number, Math::max));
      Writing.pause(10);
    }
  }

  private static int edition(HttpResponse<String> answer) {
    JsonNode list = FaultClient.tree(answer);
    return list.path("edition").asInt(1);
  }
}
