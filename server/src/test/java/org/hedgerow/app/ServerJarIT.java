package org.hedgerow.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hedgerow.store.TestDatabase;
import org.hedgerow.store.database.DatabaseAddress;
import org.hedgerow.store.editions.BankFiller;
import org.hedgerow.store.editions.SeededEdition;
import org.hedgerow.store.embedded.EmbeddedServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The jar as it is handed out: it starts, stops, survives being killed, and says in one line what
 * keeps it from starting.
 */
class ServerJarIT {
  private static final String WRITES_CONTRIBUTIONS =
      """
      select from pg_locks
      where relation = 'contributions'::regclass and mode = 'RowExclusiveLock' and granted
      """;

  @TempDir private Path folder;

  @AfterEach
  void leaveNoDatabaseBehind() {
    database().ifPresent(ProcessHandle::destroyForcibly);
  }

  @Test
  void servesAloneInItsFolderAndStopsInAnOrderlyWay() throws Exception {
    SeededData.copyInto(folder);
    try (RunningJar jar = serve()) {
      assertThat(jar.get("/health/live").statusCode()).isEqualTo(200);
      assertThat(jar.get("/health/ready").statusCode()).isEqualTo(200);
      assertThat(jar.get("/metrics").body()).contains("jvm_memory_used_bytes");
      try (RunningJar second = serve()) {
        assertFails(second, "in use by another Hedgerow");
      }
      assertThat(jar.stop()).isZero();
      assertThat(folder.resolve("data/postgresql/postmaster.pid")).doesNotExist();
    }
  }

  /** First the program alone, then it and its database, then its database alone, twice. */
  @Test
  void startsAgainWhateverWasKilledOrEndsAndSaysWhyItCannot() throws Exception {
    SeededData.copyInto(folder);
    try (RunningJar killed = serve()) {
      killed.awaitReady();
      killed.kill();
    }
    assertThat(database()).as("the database left behind").isPresent();
    try (RunningJar killed = serve()) {
      killed.awaitReady();
      ProcessHandle database = database().orElseThrow();
      killed.kill();
      database.destroyForcibly();
      database.onExit().get();
    }
    try (RunningJar jar = serve()) {
      jar.awaitReady();
      ProcessHandle first = database().orElseThrow();
      first.destroyForcibly();
      assertThat(jar.get("/api/v1/words?phonogram=oa").statusCode()).isEqualTo(200);
      while (database().filter(now -> !now.equals(first)).isEmpty()
          || jar.get("/health/writes").statusCode() != 200) {
        Thread.sleep(100);
      }
      Files.write(folder.resolve("data/postgresql/global/pg_control"), new byte[0]);
      database().orElseThrow().destroyForcibly();
      assertThat(jar.get("/api/v1/words?phonogram=oa").statusCode()).isEqualTo(200);
      assertThat(jar.awaitExit()).isEqualTo(1);
      assertThat(jar.errors())
          .contains("hedgerow: The embedded database ended and can't be started again.")
          .contains("The data folder is damaged: restore a backup.")
          .doesNotContain("Exception");
    }
  }

  @Test
  void startsAgainAfterItWasKilledDuringItsFirstStart() throws Exception {
    try (RunningJar killed = serve()) {
      await(folder.resolve("data/first-start"));
      killed.kill();
    }
    assertOpens();
  }

  @Test
  void startsAgainAfterItWasKilledWhileItUnpackedPostgresql() throws Exception {
    try (RunningJar killed = serve()) {
      await(folder.resolve("data/engine"));
      killed.kill();
    }
    assertOpens();
  }

  @Test
  void fillsTheBankFromNothingAfterItWasKilledMeanwhile() throws Exception {
    try (RunningJar killed = serve()) {
      killed.awaitOut("Filling the word bank: 30 %");
      killed.kill();
    }
    try (RunningJar again = serve()) {
      assertThat(again.get("/api/v1/words?phonogram=oa").body()).contains("boat");
      assertThat(again.out()).contains("Filling the word bank: 10 %", "The word bank is filled");
      assertThat(again.stop()).isZero();
    }
  }

  /**
   * Wherever it is killed, it is whole or not there at the next start, and its sign-ins were shown.
   * Later editions bear later dates, the first one the earliest.
   */
  @Test
  void theDemoIsWholeAndInOrderAfterItWasKilledMeanwhile() throws Exception {
    SeededData.copyInto(folder);
    String before;
    try (RunningJar killed = RunningJar.start(folder, "serve", "--port", "0", "--demo")) {
      awaitDemoBegun();
      killed.kill();
      before = killed.out();
    }
    try (RunningJar jar = RunningJar.start(folder, "serve", "--port", "0", "--demo")) {
      JsonNode editions =
          new ObjectMapper().readTree(jar.get("/api/v1/editions?limit=100").body()).get("editions");
      List<Instant> newestFirst =
          editions.findValues("at").stream().map(at -> Instant.parse(at.asText())).toList();
      assertThat(newestFirst).hasSizeGreaterThan(3).isSortedAccordingTo(Comparator.reverseOrder());
      assertThat(before + jar.out()).contains("Its people sign in like this");
      assertThat(jar.stop()).isZero();
    }
  }

  @Test
  void saysAtOnceThatItNeedsMoreMemory() throws Exception {
    try (RunningJar jar =
        RunningJar.startWith(folder, List.of("-Xmx64m"), "serve", "--port", "0")) {
      assertFails(jar, "There isn't enough memory: Java may use 6");
    }
  }

  @Test
  void migratesAndEnds() throws Exception {
    try (RunningJar migrate = RunningJar.start(folder, "migrate")) {
      assertThat(migrate.awaitExit()).isZero();
      assertThat(migrate.out()).contains("The schema is now version");
    }
    assertThat(database()).isEmpty();
  }

  @Test
  void refusesAPortInUse() throws Exception {
    try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        RunningJar jar =
            RunningJar.start(folder, "serve", "--port", Integer.toString(other.getLocalPort()))) {
      assertFails(jar, "Port " + other.getLocalPort() + " on 127.0.0.1 is in use");
    }
  }

  @Test
  void refusesADataFolderThatIsAFile() throws Exception {
    Files.createFile(folder.resolve("data"));
    try (RunningJar jar = serve()) {
      assertFails(jar, "there is a file of that name");
    }
  }

  @Test
  void refusesADatabaseThatDoesNotAnswer() throws Exception {
    int port;
    try (ServerSocket socket = new ServerSocket(0)) {
      port = socket.getLocalPort();
    }
    String url = "jdbc:postgresql://127.0.0.1:" + port + "/bank?password=hawthorn";
    try (RunningJar jar = RunningJar.start(folder, "serve", "--port", "0", "--database-url", url)) {
      assertFails(jar, "No PostgreSQL answers at 127.0.0.1:" + port + "/bank");
      assertThat(jar.errors()).doesNotContain("hawthorn");
    }
  }

  @Test
  void servesFromAnExternalDatabase() throws Exception {
    try (TestDatabase database = TestDatabase.open()) {
      new BankFiller(database.bank()).fill(() -> SeededEdition.of("boat"), "A boat.", () -> {});
      try (RunningJar jar = RunningJar.start(folder, "serve", "--config", settings(database))) {
        assertThat(jar.get("/api/v1/words?phonogram=oa").body()).contains("boat");
        assertThat(jar.stop()).isZero();
      }
    }
    assertThat(folder.resolve("data")).doesNotExist();
  }

  private String settings(TestDatabase database) throws IOException {
    String settings =
        "port=0\ndatabase-url=%s\n".formatted(database.address().url())
            + database.address().user().map("database-user=%s\n"::formatted).orElse("")
            + database.address().password().map("database-password=%s\n"::formatted).orElse("");
    return Files.writeString(folder.resolve("settings.properties"), settings).toString();
  }

  private RunningJar serve() {
    return RunningJar.start(folder, "serve", "--port", "0");
  }

  private void assertOpens() throws Exception {
    try (RunningJar again = RunningJar.start(folder, "migrate")) {
      assertThat(again.awaitExit()).isZero();
    }
    assertThat(database()).isEmpty();
  }

  private static void assertFails(RunningJar jar, String message) throws InterruptedException {
    assertThat(jar.awaitExit()).isEqualTo(1);
    assertThat(jar.errors()).contains(message).hasLineCount(1);
    assertThat(jar.out()).isEmpty();
  }

  private static void await(Path file) throws InterruptedException {
    for (int tries = 0; tries < 2000 && !Files.exists(file); tries++) {
      Thread.sleep(10);
    }
    assertThat(file).exists();
  }

  /** Waits until the demo's transaction, which nobody else sees into, has written contributions. */
  private void awaitDemoBegun() throws InterruptedException {
    await(folder.resolve("data/postgresql/postmaster.pid"));
    for (int tries = 0; tries < 2000; tries++) {
      if (isDemoBegun()) {
        return;
      }
      Thread.sleep(10);
    }
    throw new AssertionError("The demo isn't begun.");
  }

  private boolean isDemoBegun() {
    Optional<DatabaseAddress> running = EmbeddedServer.running(folder.resolve("data"));
    return running.isPresent() && writesContributions(running.get());
  }

  private static boolean writesContributions(DatabaseAddress database) {
    try (Connection connection =
            DriverManager.getConnection(
                database.url(), database.user().orElse(null), database.password().orElse(null));
        Statement sql = connection.createStatement();
        ResultSet begun = sql.executeQuery(WRITES_CONTRIBUTIONS)) {
      return begun.next();
    } catch (SQLException notUpYet) {
      return false;
    }
  }

  /** The PostgreSQL that runs on the data folder, if one does and has said so. */
  private Optional<ProcessHandle> database() {
    try (Stream<String> lines = Files.lines(folder.resolve("data/postgresql/postmaster.pid"))) {
      // a PostgreSQL that is just starting has created the file and may not have filled it yet
      return lines.findFirst().map(String::strip).map(Long::valueOf).flatMap(ProcessHandle::of);
    } catch (IOException none) {
      return Optional.empty();
    }
  }
}
