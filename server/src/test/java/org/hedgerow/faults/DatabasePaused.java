package org.hedgerow.faults;

import java.time.Duration;
import java.util.List;

/** PostgreSQL doesn't answer, as on a machine that swaps, and goes on (SIGSTOP, SIGCONT). */
final class DatabasePaused implements Scenario {
  private static final Duration RECOVERY = Duration.ofSeconds(60);

  @Override
  public String name() {
    return "database-paused";
  }

  @Override
  public Result run(Ground ground) throws Exception {
    int times = ground.times(5, 2);
    try (ServerProcess server = ServerProcess.start(ground.withBank(name())).awaitReady();
        Load load = new Load(() -> List.of(server.address()), ground.crew())) {
      load.write().read(4, true);
      for (int time = 0; time < times; time++) {
        Writing.pause(4000);
        server.signalDatabase("STOP");
        Writing.pause(12_000);
        server.signalDatabase("CONT");
        if (!new Recovery(server.address()).await(RECOVERY)) {
          load.tally().trouble("PostgreSQL goes on, and the server doesn't reach it");
        }
        progress(time + 1, times);
      }
      load.stop();
      Reckoning reckoning = new Auditor(server.address(), ground.crew(), load.ledger()).reckon();
      server.stop();
      return Result.of(
          name(),
          "%d times 12 s of silence from the database, under reads and writes".formatted(times),
          load.tally(),
          reckoning,
          load.tally().toString());
    }
  }
}
