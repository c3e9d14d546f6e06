package org.hedgerow.store.embedded;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.hedgerow.store.database.DiskReserve;
import org.hedgerow.store.database.FileTrees;
import org.hedgerow.store.database.PrivateFiles;

/**
 * The layout of a persistent data folder. Deleting any file in it by hand may lose the bank, the
 * engine excepted.
 */
final class DataFolder {
  private static final Pattern NUMBERED = Pattern.compile("\\d{1,10}");
  private static final int FIRST_MADE = 16_384;

  private static final Set<String> FILES =
      Set.of(
          "postgresql",
          "engine",
          "start.log",
          "lock",
          "first-start",
          "database-password",
          "reserve");

  private final Path root;
  private final Path engine;

  private DataFolder(Path root, Path engine) {
    this.root = root;
    this.engine = engine;
  }

  /**
   * Makes the folder where it isn't there yet.
   *
   * @param engine where PostgreSQL's programs are, if not in the folder
   * @throws DatabaseUnavailableException if it can't be made, or is no folder
   */
  static DataFolder open(Path path, Optional<Path> engine) {
    try {
      Path root = made(path).toRealPath();
      return new DataFolder(root, engine.orElse(root.resolve("engine")));
    } catch (IOException problem) {
      throw unusable(path, problem);
    }
  }

  /** Closes it to others unless it also holds what isn't ours. */
  private static Path made(Path path) throws IOException {
    if (!Files.exists(path)) {
      Files.createDirectories(path.toAbsolutePath().getParent());
      PrivateFiles.createDirectory(path);
    } else if (Files.isDirectory(path) && isOurs(path)) {
      PrivateFiles.close(path);
    }
    return Files.createDirectories(path);
  }

  private static boolean isOurs(Path path) throws IOException {
    try (Stream<Path> files = Files.list(path)) {
      return files.allMatch(file -> FILES.contains(file.getFileName().toString()));
    }
  }

  static DatabaseUnavailableException unusable(Path path, IOException problem) {
    return new DatabaseUnavailableException(
        "The data folder %s can't be used: %s. Choose another with --data."
            .formatted(path.toAbsolutePath().normalize(), reason(problem)),
        problem);
  }

  private static String reason(IOException problem) {
    if (problem instanceof AccessDeniedException) {
      return "this user may not write there";
    }
    if (problem instanceof FileAlreadyExistsException) {
      return "there is a file of that name";
    }
    if (problem instanceof NoSuchFileException) {
      return "it can't be made there";
    }
    if (problem instanceof FileSystemException system && system.getReason() != null) {
      return system.getReason();
    }
    return String.valueOf(problem.getMessage());
  }

  Path root() {
    return root;
  }

  /** PostgreSQL's own data directory. */
  Path cluster() {
    return root.resolve("postgresql");
  }

  /** The unpacked PostgreSQL programs. */
  Path engine() {
    return engine;
  }

  /** What PostgreSQL says before its own log begins. */
  Path startLog() {
    return root.resolve("start.log");
  }

  /** Keeps room for a start on a full disk. */
  DiskReserve ballast() {
    return new DiskReserve(root);
  }

  /** The password of the server that runs on the cluster, for its owner alone. */
  Path password() {
    return root.resolve("database-password");
  }

  /** Held locked by the one process that serves the folder. */
  Path lock() {
    return root.resolve("lock");
  }

  /** There from before the first start until PostgreSQL has come up once. */
  Path firstStartMark() {
    return root.resolve("first-start");
  }

  /**
   * Clears what a first start that was cut short left behind. The mark alone proves nothing, so a
   * cluster in which anybody made anything stays.
   */
  void sweep() {
    try {
      if (Files.exists(firstStartMark()) && Files.exists(cluster()) && !holdsData()) {
        FileTrees.delete(cluster());
      }
    } catch (IOException problem) {
      throw unusable(root, problem);
    }
  }

  /**
   * Whether the cluster holds a file of a database or table that was made after {@code initdb}:
   * PostgreSQL numbers these from 16384, its {@code FirstNormalObjectId}.
   */
  private boolean holdsData() throws IOException {
    return hasMadeFile(cluster().resolve("base"), 2)
        || hasMadeFile(cluster().resolve("pg_tblspc"), 1);
  }

  private static boolean hasMadeFile(Path place, int depth) throws IOException {
    if (!Files.exists(place)) {
      return false;
    }
    try (Stream<Path> files = Files.walk(place, depth)) {
      return files.anyMatch(DataFolder::isMade);
    } catch (UncheckedIOException problem) {
      throw problem.getCause();
    }
  }

  private static boolean isMade(Path file) {
    Matcher name = NUMBERED.matcher(file.getFileName().toString());
    return name.lookingAt() && Long.parseLong(name.group()) >= FIRST_MADE;
  }

  void markFirstStart() {
    try {
      if (!Files.exists(cluster()) && !Files.exists(firstStartMark())) {
        Files.createFile(firstStartMark());
      }
    } catch (IOException problem) {
      throw unusable(root, problem);
    }
  }

  void clearFirstStartMark() {
    try {
      Files.deleteIfExists(firstStartMark());
    } catch (IOException problem) {
      throw unusable(root, problem);
    }
  }
}
