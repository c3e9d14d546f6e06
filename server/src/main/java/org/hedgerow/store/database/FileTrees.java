package org.hedgerow.store.database;

import static java.nio.file.StandardCopyOption.ATOMIC_MOVE;
import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Deletes folders with what is in them, and puts files in the place of others. */
public final class FileTrees {
  private FileTrees() {}

  public static void delete(Path tree) throws IOException {
    if (!Files.exists(tree)) {
      return;
    }
    try (Stream<Path> files = Files.walk(tree)) {
      files.sorted(Comparator.reverseOrder()).forEach(FileTrees::deleteOne);
    } catch (UncheckedIOException problem) {
      throw problem.getCause();
    }
  }

  /** Leaves the folder itself. */
  public static void deleteAllIn(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.toList()) {
          delete(file);
        }
      }
    }
  }

  public static void replace(Path present, Path replaced) throws IOException {
    Files.move(present, replaced, ATOMIC_MOVE, REPLACE_EXISTING);
  }

  private static void deleteOne(Path file) {
    try {
      Files.delete(file);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
