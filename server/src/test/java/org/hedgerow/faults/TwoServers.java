package org.hedgerow.faults;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ThreadLocalRandom;

/** Two servers on one database: what one doesn't answer is repeated at the other; one is killed. */
final class TwoServers implements Scenario {
  @Override
  public String name() {
    return "two-servers";
  }

  @Override
  public Result run(Ground ground) throws Exception {
    int kills = ground.times(10, 2);
    Path other = ground.empty("other");
    try (ServerProcess first = ServerProcess.start(ground.withBank(name())).awaitReady()) {
      SharedDatabase database = SharedDatabase.of(first);
      try (ServerProcess second =
              ServerProcess.start(other, database.options(other, database.port())).awaitReady();
          Load load = new Load(() -> List.of(first.address(), second.address()), ground.crew())) {
        load.write().read(4, false);
        for (int kill = 0; kill < kills; kill++) {
          Writing.pause(ThreadLocalRandom.current().nextLong(2000, 6000));
          second.kill();
          Writing.pause(1000);
          second.startAgain();
          second.awaitReady();
          progress(kill + 1, kills);
        }
        load.stop();
        Reckoning reckoning = new Auditor(second.address(), ground.crew(), load.ledger()).reckon();
        second.stop();
        first.stop();
        return Result.of(
            name(),
            "writes through both, repeated at the other; %d kills of one".formatted(kills),
            load.tally(),
            reckoning,
            load.tally().toString());
      }
    }
  }
}
