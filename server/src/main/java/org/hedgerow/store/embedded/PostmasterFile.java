package org.hedgerow.store.embedded;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a running PostgreSQL writes of itself into {@code postmaster.pid}: a line each for its
 * process, data directory, start time and port (PostgreSQL's manual, "Database File Layout").
 *
 * @param process its process id
 * @param port the TCP port it listens on
 */
record PostmasterFile(long process, int port) {
  static Path in(Path cluster) {
    return cluster.resolve("postmaster.pid");
  }

  /** Empty if no PostgreSQL says that it runs on the directory. */
  static Optional<PostmasterFile> read(Path cluster) {
    try {
      List<String> lines = Files.readAllLines(in(cluster));
      return Optional.of(
          new PostmasterFile(
              Long.parseLong(lines.get(0).strip()), Integer.parseInt(lines.get(3).strip())));
    } catch (IOException | NumberFormatException | IndexOutOfBoundsException noneOrHalfWritten) {
      return Optional.empty();
    }
  }
}
