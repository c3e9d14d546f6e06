package org.hedgerow.app;

import static java.nio.file.StandardCopyOption.COPY_ATTRIBUTES;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import org.hedgerow.store.TestServer;

/**
 * A data folder with a filled bank, made once in a run by the built program; tests get copies,
 * which saves each of them the seconds of a first start.
 */
public final class SeededData {
  private static final Path PLACE = TestServer.inFork("target/seeded").toAbsolutePath();
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

  private static Path make() {
    Path data = PLACE.resolve(DATA);
    try {
      delete(data);
      Files.createDirectories(PLACE);
      fill(PLACE);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    } catch (InterruptedException interruption) {
      throw new IllegalStateException(interruption);
    }
    return data;
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
