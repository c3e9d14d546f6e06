package org.hedgerow.store.embedded;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.TestServer;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The embedded server on folders in every state they can be in. */
class EmbeddedDatabaseIT {
  @TempDir private Path folder;

  @Test
  void keepsWhatItWasGivenOverARestart() {
    try (BankDatabase bank = open()) {
      bank.jdbi()
          .useHandle(handle -> handle.execute("insert into editions values (1, now(), 'x')"));
    }
    try (BankDatabase bank = open()) {
      assertThat(text(bank, "select summary from editions")).isEqualTo("x");
      assertThat(bank.migration().applied()).isZero();
    }
  }

  @Test
  void writesThroughToTheDisk() {
    try (BankDatabase bank = open()) {
      assertThat(text(bank, "show fsync")).isEqualTo("on");
      assertThat(text(bank, "show synchronous_commit")).isEqualTo("on");
      assertThat(text(bank, "show full_page_writes")).isEqualTo("on");
      assertThat(text(bank, "show listen_addresses")).isEqualTo("localhost");
    }
  }

  @Test
  void refusesAFolderInUseAndNamesTheProcess() {
    try (BankDatabase bank = open()) {
      assertThat(bank.answers()).isTrue();
      assertThatThrownBy(this::open)
          .isInstanceOf(DatabaseUnavailableException.class)
          .hasMessageContaining("in use")
          .hasMessageContaining("process " + ProcessHandle.current().pid());
    }
  }

  @Test
  void letsAReaderInBesideTheServer() {
    try (BankDatabase bank = open();
        BankDatabase reader = BankDatabase.embeddedOrRunning(folder)) {
      bank.jdbi()
          .useHandle(handle -> handle.execute("insert into editions values (1, now(), 'y')"));
      assertThat(text(reader, "select summary from editions")).isEqualTo("y");
    }
  }

  @Test
  void beginsAgainWhereTheFirstStartWasCutShort() throws IOException {
    Files.createDirectories(folder.resolve("postgresql/base"));
    Files.writeString(folder.resolve("postgresql/PG_VERSION"), "18\n");
    Files.createFile(folder.resolve("first-start"));
    try (BankDatabase bank = open()) {
      assertThat(bank.answers()).isTrue();
    }
    assertThat(folder.resolve("first-start")).doesNotExist();
  }

  @Test
  void leavesAForeignProcessAloneWhoseNumberThePostmasterHad() throws IOException {
    open().close();
    Files.writeString(
        folder.resolve("postgresql/postmaster.pid"),
        ProcessHandle.current().pid() + "\n" + folder + "\n0\n1\n\nlocalhost\n");
    try (BankDatabase bank = open()) {
      assertThat(bank.answers()).isTrue();
    }
  }

  @Test
  void tellsAtOnceWhyItDoesNotStart() throws IOException {
    open().close();
    Files.writeString(folder.resolve("postgresql/PG_VERSION"), "9.6\n");
    assertThatThrownBy(this::open)
        .isInstanceOf(DatabaseUnavailableException.class)
        .hasMessageContaining("doesn't start")
        .hasMessageContaining("incompatible")
        .message()
        .hasLineCount(1);
  }

  @Test
  void refusesAFileInPlaceOfTheFolder() throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    assertThatThrownBy(() -> BankDatabase.embedded(file))
        .isInstanceOf(DatabaseUnavailableException.class)
        .hasMessageContaining("there is a file of that name");
  }

  private BankDatabase open() {
    return BankDatabase.embedded(folder, TestServer.engine());
  }

  private static String text(BankDatabase bank, String query) {
    return bank.jdbi().withHandle(handle -> handle.createQuery(query).mapTo(String.class).one());
  }
}
