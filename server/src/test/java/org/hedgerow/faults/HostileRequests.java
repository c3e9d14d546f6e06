package org.hedgerow.faults;

import java.time.Duration;
import org.hedgerow.fuzz.FuzzReport;
import org.hedgerow.fuzz.FuzzRun;
import org.hedgerow.fuzz.Oracle;

/** Hostile requests, as {@code org.hedgerow.fuzz} makes them. */
final class HostileRequests implements Scenario {
  private static final Duration MAX_LENGTH = Duration.ofMinutes(60);

  @Override
  public String name() {
    return "hostile-requests";
  }

  @Override
  public Result run(Ground ground) throws Exception {
    try (ServerProcess server = ServerProcess.start(ground.withBank(name())).awaitReady()) {
      FuzzRun run =
          new FuzzRun(
              ground.options().seed(),
              server.port(),
              ground.crew().ofRoles(),
              oracle(ground.options()));
      FuzzReport report = run.run(0, ground.options().requests(), MAX_LENGTH);
      run.described(report).forEach(System.err::println);
      server.stop();
      return new Result(
          name(),
          "for every operation, by every role; seed " + ground.options().seed(),
          report.requests(),
          0,
          0,
          0,
          report.kinds(),
          report.slowest(),
          report.statuses().toString());
    }
  }

  private static Oracle oracle(SuiteOptions options) {
    Oracle oracle = Oracle.within(Tally.MAX_LENGTH);
    return options.contract() ? oracle.withContract() : oracle;
  }
}
