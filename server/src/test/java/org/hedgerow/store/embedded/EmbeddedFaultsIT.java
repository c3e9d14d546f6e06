package org.hedgerow.store.embedded;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.file.StandardCopyOption.COPY_ATTRIBUTES;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.hedgerow.operations.DamagedRecordsException;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.TestServer;
import org.hedgerow.store.database.ConnectionProbe;
import org.hedgerow.store.database.DamagedData;
import org.hedgerow.store.database.DatabaseAddress;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.hedgerow.store.database.FileTrees;
import org.hedgerow.store.editions.EditionReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The embedded server on copies of one folder, each spoiled in its own way. */
class EmbeddedFaultsIT {
  private static final String ROW = "select summary from editions";

  @TempDir private static Path made;
  @TempDir private Path temporary;

  /** The file of the table {@code editions}, in the cluster. */
  private static String table = "";

  private Path folder = Path.of("");

  @BeforeAll
  static void make() {
    try (BankDatabase bank = open(made.resolve("data"))) {
      bank.jdbi()
          .useHandle(handle -> handle.execute("insert into editions values (1, now(), 'kept')"));
      table = text(bank, "select pg_relation_filepath('editions')");
      bank.jdbi().useHandle(handle -> handle.execute("checkpoint"));
    }
  }

  @BeforeEach
  void copy() throws IOException {
    folder = temporary.resolve("data");
    Path source = made.resolve("data");
    try (Stream<Path> files = Files.walk(source)) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(source.relativize(file).toString()), COPY_ATTRIBUTES);
      }
    }
  }

  private static BankDatabase open(Path folder) {
    return BankDatabase.embedded(folder, TestServer.engine());
  }

  private static String text(BankDatabase bank, String query) {
    return bank.jdbi().withHandle(handle -> handle.createQuery(query).mapTo(String.class).one());
  }

  private Path cluster(String file) {
    return folder.resolve("postgresql").resolve(file);
  }

  private static String permissions(Path file) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
  }

  private static void assertAsksForThePassword(BankDatabase bank) {
    DatabaseAddress open =
        new DatabaseAddress(bank.address().url(), bank.address().user(), Optional.empty());
    assertThatThrownBy(() -> ConnectionProbe.check(open))
        .isInstanceOf(DatabaseUnavailableException.class)
        .hasMessageContaining("refuses this user and password");
    DatabaseAddress guessed = new DatabaseAddress(open.url(), open.user(), Optional.of("postgres"));
    assertThatThrownBy(() -> ConnectionProbe.check(guessed))
        .hasRootCauseInstanceOf(SQLException.class);
  }

  @Test
  void letsNobodyInWithoutThePasswordThatOnlyItsOwnerCanRead() throws IOException {
    try (BankDatabase bank = open(folder)) {
      assertAsksForThePassword(bank);
      assertThat(permissions(folder)).isEqualTo("rwx------");
      assertThat(permissions(folder.resolve("database-password"))).isEqualTo("rw-------");
      assertThat(permissions(cluster(""))).isEqualTo("rwx------");
    }
  }

  /** As earlier versions made it. */
  @Test
  void closesAClusterThatWasOpenAndKeepsWhatIsInIt() throws IOException {
    Path rules = cluster("pg_hba.conf");
    Files.writeString(rules, Files.readString(rules).replace("scram-sha-256", "trust"));
    Files.delete(folder.resolve("database-password"));
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    try (BankDatabase bank = open(folder)) {
      assertAsksForThePassword(bank);
      assertThat(text(bank, ROW)).isEqualTo("kept");
      assertThat(Files.readString(rules)).contains("scram-sha-256").doesNotContain("  trust");
      assertThat(permissions(folder)).isEqualTo("rwx------");
    }
  }

  @Test
  void makesAPasswordAnewThatDoesNotFit() throws IOException {
    Files.writeString(folder.resolve("database-password"), "of another folder\n");
    try (BankDatabase bank = open(folder)) {
      assertThat(text(bank, ROW)).isEqualTo("kept");
      assertAsksForThePassword(bank);
    }
  }

  @Test
  void leavesTheRightsOfAFolderThatHoldsOtherThings() throws IOException {
    Path shared = Files.createDirectory(temporary.resolve("shared"));
    Files.setPosixFilePermissions(shared, PosixFilePermissions.fromString("rwxr-xr-x"));
    Files.createFile(shared.resolve("letter.txt"));
    DataFolder.open(shared, Optional.empty());
    assertThat(permissions(shared)).isEqualTo("rwxr-xr-x");
  }

  @Test
  void aStrayMarkOfAFirstStartDeletesNothing() throws IOException {
    Files.createFile(folder.resolve("first-start"));
    try (BankDatabase bank = open(folder)) {
      assertThat(text(bank, ROW)).isEqualTo("kept");
    }
    assertThat(folder.resolve("first-start")).doesNotExist();
  }

  @Test
  void aStrayMarkBesideADamagedClusterDeletesNothing() throws IOException {
    Files.createFile(folder.resolve("first-start"));
    Files.delete(cluster("PG_VERSION"));
    assertThatThrownBy(() -> open(folder)).isInstanceOf(DatabaseUnavailableException.class);
    assertThat(cluster(table)).exists();
  }

  @ParameterizedTest
  @CsvSource({
    "global/pg_control,100",
    "global/pg_control,0",
    "global/pg_control,",
    "PG_VERSION,",
    "PG_VERSION,0",
    "base,",
    "postgresql.conf,"
  })
  @Timeout(30)
  void saysAtOnceThatTheFolderIsDamaged(String file, Integer length) throws IOException {
    Path spoiled = cluster(file);
    if (length == null) {
      FileTrees.delete(spoiled);
    } else {
      try (FileChannel channel = FileChannel.open(spoiled, StandardOpenOption.WRITE)) {
        channel.truncate(length);
      }
    }
    assertThatThrownBy(() -> open(folder))
        .isInstanceOf(DatabaseUnavailableException.class)
        .hasMessageContaining("restore a backup")
        .message()
        .hasLineCount(1);
  }

  @Test
  void saysThatATableIsDamaged() throws IOException {
    try (FileChannel channel = FileChannel.open(cluster(table), StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap("spoiled by a bad disk".getBytes(US_ASCII)), 4_000);
      channel.write(ByteBuffer.wrap("spoiled by a bad disk".getBytes(US_ASCII)), 0);
    }
    try (BankDatabase bank = open(folder)) {
      assertThatThrownBy(() -> new EditionReader(bank).newestNumber())
          .satisfies(
              failure ->
                  assertThat(DamagedData.in(failure))
                      .hasValueSatisfying(
                          message ->
                              assertThat(message)
                                  .contains("Data is damaged", "invalid page", "restore a backup")
                                  .hasLineCount(1)));
      assertThatThrownBy(() -> bank.outage().told(() -> new EditionReader(bank).newestNumber()))
          .isInstanceOf(DamagedRecordsException.class);
    }
  }

  @Test
  @Timeout(60)
  void startsAgainAtTheSameAddressWhenItIsKilled() throws Exception {
    try (BankDatabase bank = open(folder)) {
      bank.keepRunning(lost -> {});
      PostmasterFile first = PostmasterFile.read(folder.resolve("postgresql")).orElseThrow();
      ProcessHandle.of(first.process()).orElseThrow().destroyForcibly();
      while (!answersAfter(bank, first)) {
        TimeUnit.MILLISECONDS.sleep(50);
      }
      assertThat(text(bank, ROW)).isEqualTo("kept");
    }
    assertThat(cluster("postmaster.pid")).doesNotExist();
  }

  private boolean answersAfter(BankDatabase bank, PostmasterFile first) {
    return PostmasterFile.read(folder.resolve("postgresql"))
            .filter(now -> now.process() != first.process())
            .isPresent()
        && bank.answers();
  }
}
