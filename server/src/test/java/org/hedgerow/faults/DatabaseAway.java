package org.hedgerow.faults;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/** The database can't be reached, and comes back: reads go on, writes answer 503 in time. */
final class DatabaseAway implements Scenario {
  private static final Duration RECOVERY = Duration.ofSeconds(60);

  @Override
  public String name() {
    return "database-away";
  }

  @Override
  public Result run(Ground ground) throws Exception {
    int times = ground.times(5, 2);
    Path other = ground.empty("other");
    try (ServerProcess owner = ServerProcess.start(ground.withBank(name())).awaitReady()) {
      SharedDatabase database = SharedDatabase.of(owner);
      try (Relay relay = new Relay(database.port());
          ServerProcess server =
              ServerProcess.start(other, database.options(other, relay.port())).awaitReady();
          Load load = new Load(() -> List.of(server.address()), ground.crew())) {
        load.write().read(4, true);
        for (int time = 0; time < times; time++) {
          Writing.pause(4000);
          away(relay, server, load.tally());
          progress(time + 1, times);
        }
        load.stop();
        Reckoning reckoning = new Auditor(server.address(), ground.crew(), load.ledger()).reckon();
        server.stop();
        owner.stop();
        return Result.of(
            name(),
            "%d times 8 s without a way to the database, under reads and writes".formatted(times),
            load.tally(),
            reckoning,
            load.tally().toString());
      }
    }
  }

  private static void away(Relay relay, ServerProcess server, Tally tally) throws Exception {
    int before = tally.count(503);
    relay.cut();
    Writing.pause(8000);
    relay.mend();
    if (tally.count(503) == before) {
      tally.trouble("no write was answered 503 while the database was away");
    }
    if (!new Recovery(server.address()).await(RECOVERY)) {
      tally.trouble("the database is back, and the server doesn't reach it");
    }
  }
}
