package org.hedgerow.app;

import static java.nio.file.StandardCopyOption.COPY_ATTRIBUTES;
import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * A data folder with a filled bank, made once by each build of the program, however many programs
 * run tests side by side; tests get copies, which saves each of them the seconds of a first start.
 */
public final class SeededData {
  private static final Path PLACE =
      Path.of(System.getProperty("hedgerow.jar")).toAbsolutePath().resolveSibling("seeded");
  private static final String MADE = "made";
  private static final String DATA = "data";

  private static final class Holder {
    static final Path FOLDER = make();
  }

  private SeededData() {}

  /** Makes the folder {@code data} in another, ready to serve from. */
  public static void copyInto(Path folder) {
    Path source = Holder.FOLDER;
    Path target = folder.resolve(DATA);
    try (Stream<Path> files = Files.walk(source)) {
      for (Path file : files.toList()) {
        Path copy = target.resolve(source.relativize(file).toString());
        Files.copy(file, copy, COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
      }
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Whoever comes first makes it, and others wait for it. */
  private static Path make() {
    try {
      Files.createDirectories(PLACE);
      try (FileChannel channel = FileChannel.open(PLACE.resolve("lock"), CREATE, WRITE);
          FileLock lock = channel.lock()) {
        if (lock.isValid() && !isMade()) {
          delete(PLACE.resolve(DATA));
          fill(PLACE);
          Files.writeString(PLACE.resolve(MADE), build());
        }
      }
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    } catch (InterruptedException interruption) {
      throw new IllegalStateException(interruption);
    }
    return PLACE.resolve(DATA);
  }

  private static boolean isMade() throws IOException {
    Path made = PLACE.resolve(MADE);
    return Files.exists(made) && Files.readString(made).equals(build());
  }

  /** By what this build of the program is told from others. */
  private static String build() throws IOException {
    return Files.getLastModifiedTime(Path.of(System.getProperty("hedgerow.jar"))).toString();
  }

  private static void fill(Path folder) throws InterruptedException {
    try (RunningJar jar = RunningJar.start(folder, "seed")) {
      if (jar.awaitExit() != 0) {
        throw new AssertionError("It doesn't fill the bank.\n" + jar.out() + jar.errors());
      }
    }
  }

  private static void delete(Path tree) throws IOException {
    if (Files.exists(tree)) {
      try (Stream<Path> files = Files.walk(tree)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }
}
