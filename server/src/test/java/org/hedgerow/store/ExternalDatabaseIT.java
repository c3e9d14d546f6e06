package org.hedgerow.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.assertj.core.api.AbstractThrowableAssert;
import org.hedgerow.store.database.DatabaseAddress;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.hedgerow.store.embedded.EmbeddedServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A server given by its address, here a second PostgreSQL that wants a password. */
class ExternalDatabaseIT {
  private static final Optional<String> TEACHER = Optional.of("teacher");

  @TempDir private static Path folder;

  private static EmbeddedServer server;

  @BeforeAll
  static void startAServerThatWantsAPassword() throws IOException {
    server = EmbeddedServer.start(folder, Optional.of(TestServer.engine()));
    Files.writeString(
        folder.resolve("postgresql/pg_hba.conf"),
        "host all postgres all trust\nhost all all all scram-sha-256\n");
    try (BankDatabase administrator = BankDatabase.external(server.address())) {
      administrator
          .jdbi()
          .useHandle(
              handle -> {
                handle.execute("create role teacher login password 'hawthorn'");
                handle.execute("create database school owner teacher");
                handle.execute("select pg_reload_conf()");
              });
    }
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @Test
  void opensWithUserAndPassword() {
    try (BankDatabase bank =
        BankDatabase.external(
            new DatabaseAddress(url("school"), TEACHER, Optional.of("hawthorn")))) {
      assertThat(bank.answers()).isTrue();
      assertThat(bank.migration().applied()).isPositive();
    }
  }

  @Test
  void refusesAWrongPasswordWithoutRepeatingIt() {
    assertRefused(new DatabaseAddress(url("school"), TEACHER, Optional.of("blackthorn")))
        .hasMessageContaining("refuses this user and password")
        .hasMessageNotContaining("blackthorn");
  }

  @Test
  void refusesAMissingPassword() {
    assertRefused(new DatabaseAddress(url("school"), TEACHER, Optional.empty()))
        .hasMessageContaining("password");
  }

  @Test
  void saysThatThereIsNoSuchDatabase() {
    assertRefused(new DatabaseAddress(url("nursery"), Optional.of("postgres"), Optional.empty()))
        .hasMessageContaining("no such database");
  }

  @Test
  void saysThatNobodyAnswers() throws IOException {
    int port;
    try (ServerSocket socket = new ServerSocket(0)) {
      port = socket.getLocalPort();
    }
    assertRefused(
            new DatabaseAddress(
                "jdbc:postgresql://127.0.0.1:" + port + "/school?password=hawthorn",
                TEACHER,
                Optional.empty()))
        .hasMessageContaining("No PostgreSQL answers at 127.0.0.1:" + port + "/school")
        .hasMessageNotContaining("hawthorn");
  }

  @Test
  void refusesWhatIsNoUrl() {
    assertThatThrownBy(
            () ->
                new DatabaseAddress(
                    "postgres://localhost/school", Optional.empty(), Optional.empty()))
        .isInstanceOf(DatabaseUnavailableException.class)
        .hasMessageContaining("jdbc:postgresql://host:5432/database");
  }

  private static AbstractThrowableAssert<?, ? extends Throwable> assertRefused(
      DatabaseAddress address) {
    return assertThatThrownBy(() -> BankDatabase.external(address))
        .isInstanceOf(DatabaseUnavailableException.class);
  }

  private static String url(String database) {
    return server.address().url().replace("/" + EmbeddedServer.DATABASE, "/" + database);
  }
}
