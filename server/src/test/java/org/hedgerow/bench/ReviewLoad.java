package org.hedgerow.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.PlainHash;
import org.hedgerow.app.RunningJar;
import org.hedgerow.operations.Role;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.accounts.JdbiAccountRepository;
import org.hedgerow.store.database.DatabaseAddress;

/**
 * A hundred contributors and ten reviewers at the built program, readers among them: a minute just
 * after the start, another after a rest, and a third with a second server on the same database.
 * Everything runs on this machine and stops by itself; the bank is made anew in a temporary folder.
 * Prints the figures and ends with 1 if a write was lost or a request failed.
 *
 * <pre>mvn -pl server -am -DskipTests package
 * java -Dhedgerow.jar=$PWD/server/target/hedgerow.jar \
 *   -cp server/target/test-classes:server/target/hedgerow.jar \
 *   org.hedgerow.bench.ReviewLoad [1000]</pre>
 *
 * The number is how long each of them thinks between two writes, in milliseconds.
 */
public final class ReviewLoad {
  static final int CONTRIBUTORS = 100;
  static final int REVIEWERS = 10;
  private static final Duration IDLE = Duration.ofSeconds(30);
  private static final Duration LOAD = Duration.ofSeconds(60);

  /** A server that has just been started is still being compiled in its first minute of writes. */
  private static final List<String> MINUTES =
      List.of("First minute after the start", "Second minute");

  private static final List<String> MEMORY = List.of("-Xmx512m");
  private static final Duration PATIENCE = Duration.ofMinutes(2);

  private final ReviewRecord acknowledged = new ReviewRecord();
  private final long pause;

  private ReviewLoad(long pause) {
    this.pause = pause;
  }

  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createTempDirectory("hedgerow-load");
    long pause = arguments.length > 0 ? Long.parseLong(arguments[0]) : 1000;
    boolean sound;
    try {
      sound = new ReviewLoad(pause).run(folder);
    } finally {
      delete(folder);
    }
    System.exit(sound ? 0 : 1);
  }

  private boolean run(Path folder) throws Exception {
    try (RunningJar seeding = RunningJar.start(folder, "seed")) {
      seeding.awaitExit();
    }
    Path data = folder.resolve("data");
    List<String> contributors = new ArrayList<>();
    List<String> reviewers = new ArrayList<>();
    invite(data, contributors, reviewers);
    try (RunningJar first = RunningJar.startWith(folder, MEMORY, "serve", "--port", "0")) {
      ReviewClient client = new ReviewClient(first.awaitReady());
      boolean sound = run(client, folder, data, contributors, reviewers);
      first.stop();
      return sound;
    }
  }

  private static void invite(Path data, List<String> contributors, List<String> reviewers) {
    try (BankDatabase bank = BankDatabase.embedded(data)) {
      AccountServices services =
          AccountServices.of(
              new JdbiAccountRepository(bank), new PlainHash(), InstantSource.system());
      ReviewCrowd crowd = new ReviewCrowd(services);
      for (int i = 0; i < CONTRIBUTORS; i++) {
        contributors.add(crowd.join("contributor" + i, Role.CONTRIBUTOR));
      }
      for (int i = 0; i < REVIEWERS; i++) {
        reviewers.add(crowd.join("reviewer" + i, Role.REVIEWER));
      }
    }
  }

  private static RunningJar second(Path folder, Path data) throws IOException {
    DatabaseAddress database;
    try (BankDatabase running = BankDatabase.embeddedOrRunning(data)) {
      database = running.address();
    }
    Path own = Files.createDirectory(folder.resolve("second"));
    Path password = Files.writeString(own.resolve("password"), database.password().orElseThrow());
    return RunningJar.startWith(
        own,
        MEMORY,
        "serve",
        "--port",
        "0",
        "--database-url",
        database.url(),
        "--database-user",
        database.user().orElseThrow(),
        "--database-password-file",
        password.toString());
  }

  private boolean run(
      ReviewClient client,
      Path folder,
      Path data,
      List<String> contributors,
      List<String> reviewers)
      throws Exception {
    reads(client, IDLE.dividedBy(3), 50); // before, the compiler is busy
    for (int minute = 0; minute < MINUTES.size(); minute++) {
      measure(minute, client, Optional.empty(), contributors, reviewers);
    }
    try (RunningJar second = second(folder, data)) {
      ReviewClient other = new ReviewClient(second.awaitReady());
      measure(MINUTES.size(), client, Optional.of(other), contributors, reviewers);
      second.stop();
    }
    boolean kept = new ReviewChecks(client, acknowledged, contributors, reviewers).hold();
    return kept && client.failures() == 0;
  }

  private void measure(
      int minute,
      ReviewClient client,
      Optional<ReviewClient> second,
      List<String> contributors,
      List<String> reviewers)
      throws Exception {
    Map<String, Times> idle = reads(client, IDLE, 50);
    System.out.printf("A thousand rows: %d ms%n", ThousandRows.judge(client, contributors));
    Map<String, Times> loaded = load(client, second, contributors, reviewers, minute);
    String title = minute < MINUTES.size() ? MINUTES.get(minute) : "With a second server";
    new ReviewReport(title, idle, loaded, acknowledged, LOAD, client).print();
  }

  private Map<String, Times> load(
      ReviewClient client,
      Optional<ReviewClient> second,
      List<String> contributors,
      List<String> reviewers,
      int minute)
      throws Exception {
    acknowledged.measureAnew();
    long end = System.nanoTime() + LOAD.toNanos();
    ExecutorService threads = Executors.newCachedThreadPool();
    List<Future<?>> running = new ArrayList<>();
    for (int i = 0; i < contributors.size(); i++) {
      running.add(
          threads.submit(
              new Contributing(
                  client, contributors, i, acknowledged, minute * Contributing.MAX, pause, end)));
    }
    for (String token : reviewers) {
      running.add(threads.submit(new Reviewing(client, second, token, acknowledged, pause, end)));
    }
    Map<String, Times> reads = reads(client, LOAD, 50);
    for (Future<?> each : running) {
      each.get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
    }
    threads.shutdown();
    return reads;
  }

  private static Map<String, Times> reads(ReviewClient client, Duration duration, long pause)
      throws Exception {
    return new Reading(client, System.nanoTime() + duration.toNanos(), pause).run();
  }

  static void delete(Path tree) throws IOException {
    try (Stream<Path> files = Files.walk(tree)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
