package org.hedgerow.faults;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.ThreadLocalRandom;

/**
 * SIGKILL at random moments under writes and decisions: to the server, to the server with its
 * PostgreSQL, and to PostgreSQL alone, which the server starts again by itself.
 */
final class Kills implements Scenario {
  private static final Duration RECOVERY = Duration.ofSeconds(60);

  @Override
  public String name() {
    return "kills";
  }

  @Override
  public Result run(Ground ground) throws Exception {
    int kills = ground.times(50, 4);
    try (ServerProcess server = ServerProcess.start(ground.withBank(name())).awaitReady();
        Load load = new Load(() -> List.of(server.address()), ground.crew())) {
      load.write().read(2, false);
      for (int kill = 0; kill < kills; kill++) {
        Writing.pause(ThreadLocalRandom.current().nextLong(500, 3000));
        kill(server, kill, load.tally());
        AmCheck.damage(server.data()).forEach(load.tally()::trouble);
        progress(kill + 1, kills);
      }
      load.stop();
      Reckoning reckoning = new Auditor(server.address(), ground.crew(), load.ledger()).reckon();
      server.stop();
      return Result.of(
          name(),
          kills + " kills under writes and decisions, amcheck after each",
          load.tally(),
          reckoning,
          load.tally().toString());
    }
  }

  private static void kill(ServerProcess server, int number, Tally tally) throws Exception {
    switch (number % 4) {
      case 1 -> {
        ProcessHandle database = server.postmaster().orElseThrow();
        server.kill();
        database.destroyForcibly();
        restart(server);
      }
      case 3 -> {
        server.postmaster().orElseThrow().destroyForcibly();
        awaitRecovery(server, tally);
      }
      default -> {
        server.kill();
        restart(server);
      }
    }
  }

  private static void restart(ServerProcess server) throws InterruptedException {
    server.startAgain();
    server.awaitReady();
  }

  /** A server that can't start its database again may end, for a supervisor to see. */
  private static void awaitRecovery(ServerProcess server, Tally tally) throws Exception {
    Recovery recovery = new Recovery(server.address());
    if (!recovery.await(RECOVERY)) {
      tally.trouble("PostgreSQL was killed and not started again within a minute");
      if (server.isAlive()) {
        server.kill();
      }
      restart(server);
    }
  }
}
