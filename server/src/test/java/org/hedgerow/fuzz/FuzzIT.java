package org.hedgerow.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.hedgerow.app.RunningJar;
import org.hedgerow.app.SeededData;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Hostile requests to the built program: those that were found to be answered wrongly once, and
 * some thousand new ones, the same in every run; the error suite sends many more.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FuzzIT {
  private static final long SEED = 20_261_130;
  private static final long COUNT = 4000;
  private static final Duration MAX_RUN = Duration.ofSeconds(12);

  /** Tests run side by side, so time is measured elsewhere; this finds what hangs. */
  private static final Oracle ORACLE = Oracle.within(Duration.ofSeconds(15));

  @TempDir private static Path folder;

  private RunningJar jar;
  private FuzzRun run;

  @BeforeAll
  void start() throws Exception {
    SeededData.copyInto(folder);
    jar = RunningJar.start(folder, "serve", "--port", "0");
    int port = URI.create(jar.awaitReady()).getPort();
    run = new FuzzRun(SEED, port, TestTokens.ofEveryRole(folder.resolve("data")), ORACLE);
  }

  @AfterAll
  void stop() throws Exception {
    jar.stop();
    jar.close();
  }

  @ParameterizedTest
  @MethodSource
  void isNotAnsweredWronglyAgain(Path found) throws IOException {
    assertThat(run.replay(RequestFile.read(Files.readString(found)))).isEmpty();
  }

  static List<Path> isNotAnsweredWronglyAgain() throws Exception {
    Path folder = Path.of(FuzzIT.class.getResource("found").toURI());
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  @Test
  void answersNothingWrongly() throws Exception {
    FuzzReport report = run.run(0, COUNT, MAX_RUN);
    assertThat(String.join("\n", run.described(report))).as(report.toString()).isEmpty();
    int all = report.statuses().values().stream().mapToInt(Number::intValue).sum();
    assertThat(report.statuses().get(200)).as(report.toString()).isGreaterThan(all / 10);
  }
}
