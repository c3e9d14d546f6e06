package org.hedgerow.faults;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What the command takes. */
@Command(name = "FaultSuite", description = "Runs the built program in bad weather.")
final class SuiteOptions {
  @Option(names = "--quick", description = "Few and short: some minutes altogether.")
  private boolean quick;

  @Option(names = "--only", split = ",", description = "Names of scenarios; all by default.")
  private List<String> only = List.of();

  @Option(
      names = "--soak-minutes",
      paramLabel = "NUMBER",
      description = "How long each soak takes (default: ${DEFAULT-VALUE}; 1 with --quick).")
  private int soakMinutes = 10;

  @Option(
      names = "--requests",
      paramLabel = "NUMBER",
      description = "Hostile requests (default: ${DEFAULT-VALUE}; 10000 with --quick).")
  private int requests = 200_000;

  @Option(names = "--seed", description = "Of the hostile requests.")
  private long seed = 1;

  @Option(
      names = "--contract",
      description = "Holds the answers to hostile requests against the OpenAPI document, too.")
  private boolean contract;

  @Option(names = "--report", paramLabel = "FILE", description = "Where the table is written too.")
  private @Nullable Path report;

  boolean quick() {
    return quick;
  }

  boolean wants(Scenario scenario) {
    return only.isEmpty() || only.contains(scenario.name());
  }

  Duration soak() {
    return Duration.ofMinutes(quick ? 1 : soakMinutes);
  }

  int requests() {
    return quick ? Math.min(requests, 10_000) : requests;
  }

  boolean contract() {
    return contract;
  }

  long seed() {
    return seed;
  }

  @Nullable Path report() {
    return report;
  }
}
