package org.hedgerow.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.database.DatabaseAddress;

/** The database of one server, as options for another. */
final class SharedDatabase {
  private static final Pattern PORT = Pattern.compile(":([0-9]+)/");

  private final DatabaseAddress address;

  private SharedDatabase(DatabaseAddress address) {
    this.address = address;
  }

  /** Of a server that runs. */
  static SharedDatabase of(ServerProcess server) {
    try (BankDatabase running = BankDatabase.embeddedOrRunning(server.data())) {
      return new SharedDatabase(running.address());
    }
  }

  int port() {
    Matcher port = PORT.matcher(address.url());
    if (!port.find()) {
      throw new IllegalStateException(address.url());
    }
    return Integer.parseInt(port.group(1));
  }

  /** Options for a server that runs in a folder and reaches the database through a port. */
  String[] options(Path folder, int through) {
    List<String> options =
        new ArrayList<>(
            List.of(
                "--database-url",
                address.url().replaceFirst(PORT.pattern(), ":" + through + "/"),
                "--database-user",
                address.user().orElseThrow()));
    address
        .password()
        .ifPresent(
            password ->
                options.addAll(List.of("--database-password-file", file(folder, password))));
    return options.toArray(String[]::new);
  }

  private static String file(Path folder, String password) {
    try {
      return Files.writeString(folder.resolve("database-password"), password).toString();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
