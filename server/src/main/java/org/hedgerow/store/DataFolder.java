package org.hedgerow.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The layout of a persistent data folder. Deleting any file in it by hand may lose the bank, the
 * engine excepted.
 */
final class DataFolder {
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
      Path root = Files.createDirectories(path).toRealPath();
      return new DataFolder(root, engine.orElse(root.resolve("engine")));
    } catch (IOException problem) {
      throw unusable(path, problem);
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
  Ballast ballast() {
    return new Ballast(root);
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
   * Clears what a first start or an unpacking that was cut short left behind; nothing of value can
   * be in either.
   */
  void sweep() {
    try {
      if (Files.exists(firstStartMark())) {
        deleteTree(cluster());
      }
      sweepEngine();
    } catch (IOException problem) {
      throw unusable(root, problem);
    }
  }

  void markFirstStart() {
    try {
      Files.deleteIfExists(startLog());
      if (!Files.exists(cluster()) && !Files.exists(firstStartMark())) {
        Files.createFile(firstStartMark());
      }
    } catch (IOException problem) {
      throw unusable(root, problem);
    }
  }

  /** The library lets everybody write where the programs lie; nobody else has business there. */
  void protectEngine() {
    boolean closed = engine.toFile().setWritable(false, false);
    boolean ours = engine.toFile().setWritable(true, true);
    if (!closed || !ours) {
      throw unusable(root, new IOException("the rights of the folder engine can't be changed"));
    }
  }

  void clearFirstStartMark() {
    try {
      Files.deleteIfExists(firstStartMark());
    } catch (IOException problem) {
      throw unusable(root, problem);
    }
  }

  private void sweepEngine() throws IOException {
    if (!Files.isDirectory(engine())) {
      return;
    }
    try (Stream<Path> unpacked = Files.list(engine())) {
      for (Path version : unpacked.toList()) {
        if (!Files.exists(version.resolve(".exists"))) {
          deleteTree(version);
        }
      }
    }
  }

  private static void deleteTree(Path tree) throws IOException {
    if (!Files.exists(tree)) {
      return;
    }
    try (Stream<Path> files = Files.walk(tree)) {
      files.sorted(Comparator.reverseOrder()).forEach(DataFolder::delete);
    } catch (UncheckedIOException problem) {
      throw problem.getCause();
    }
  }

  private static void delete(Path file) {
    try {
      Files.delete(file);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
