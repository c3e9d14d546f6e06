package org.hedgerow.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.database.DatabaseAddress;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which database a command works on. */
final class DatabaseOptions {
  @Option(
      names = "--data",
      paramLabel = "FOLDER",
      description = "Where the embedded database keeps its files (default: ${DEFAULT-VALUE}).")
  private Path data = Path.of("data");

  @Option(
      names = "--database-url",
      paramLabel = "URL",
      description =
          "A PostgreSQL to use in place of the embedded one: jdbc:postgresql://host/database.")
  private @Nullable String url;

  @Option(names = "--database-user", paramLabel = "NAME", description = "The user to sign in as.")
  private @Nullable String user;

  @Option(
      names = "--database-password",
      paramLabel = "PASSWORD",
      description = "Better set as HEDGEROW_DATABASE_PASSWORD, or kept in a file.")
  private @Nullable String password;

  @Option(
      names = "--database-password-file",
      paramLabel = "FILE",
      description = "A file that holds the password and nothing else.")
  private @Nullable Path passwordFile;

  /** To serve from, or to change. */
  BankDatabase open() {
    return url == null ? BankDatabase.embedded(data) : BankDatabase.external(address(url));
  }

  /** To look something up, which is possible beside a server on the same folder. */
  BankDatabase openToRead() {
    return url == null ? BankDatabase.embeddedOrRunning(data) : BankDatabase.external(address(url));
  }

  private DatabaseAddress address(String url) {
    return new DatabaseAddress(url, Optional.ofNullable(user), password());
  }

  private Optional<String> password() {
    if (password != null && passwordFile != null) {
      throw new CommandFailedException(
          "There are two passwords for the database: one given itself and one in %s. Keep one."
              .formatted(passwordFile));
    }
    return Optional.ofNullable(passwordFile)
        .map(DatabaseOptions::read)
        .or(() -> Optional.ofNullable(password));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file).stripTrailing();
    } catch (IOException problem) {
      throw new CommandFailedException(
          "The password file %s can't be read: %s.".formatted(file, problem.getMessage()));
    }
  }
}
