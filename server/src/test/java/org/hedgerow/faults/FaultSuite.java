package org.hedgerow.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/**
 * Runs the built program in bad weather: kills, a database that is away, a full disk, slow and
 * hostile clients. Every scenario starts servers of its own on a temporary data folder, keeps a
 * ledger of what was acknowledged, and looks for all of it at the end. Everything runs on this
 * machine, and stops by itself. Prints a table in Markdown; ends with 1 if anything was lost,
 * doubled or otherwise not as it must be.
 *
 * <pre>mvn -pl server -am -Pfaults verify -DskipTests [-Dfaults="--quick --only kills,disk-full"]
 * </pre>
 */
public final class FaultSuite {
  private static final List<Scenario> SCENARIOS =
      List.of(
          new Kills(),
          new DatabaseAway(),
          new DatabasePaused(),
          new DiskFull(),
          new SlowClients(),
          new HostileRequests(),
          new TwoServers(),
          new OldEditions(),
          new SentenceOrders(),
          new Soak(256),
          new Soak(512));

  private FaultSuite() {}

  public static void main(String[] arguments) throws Exception {
    SuiteOptions options = CommandLine.populateCommand(new SuiteOptions(), arguments);
    List<Result> results = new ArrayList<>();
    Runtime.getRuntime().addShutdownHook(new Thread(FaultSuite::leaveNothingBehind));
    try (Ground ground = Ground.prepare(options)) {
      for (Scenario scenario : SCENARIOS) {
        if (options.wants(scenario)) {
          System.err.println("Scenario " + scenario.name());
          Result result = run(scenario, ground);
          System.err.print(Report.row(result));
          results.add(result);
        }
      }
    }
    print(new Report(String.join(" ", arguments), results).markdown(), options.report());
    System.exit(results.stream().allMatch(Result::isSound) ? 0 : 1);
  }

  private static Result run(Scenario scenario, Ground ground) {
    try {
      return scenario.run(ground);
    } catch (Exception | AssertionError problem) {
      return Result.broken(scenario.name(), problem);
    }
  }

  private static void leaveNothingBehind() {
    ProcessHandle.current().descendants().forEach(ProcessHandle::destroyForcibly);
  }

  private static void print(String table, @Nullable Path report) throws IOException {
    System.out.println(table);
    if (report != null) {
      Files.writeString(report, table);
    }
  }
}
