package org.hedgerow.faults;

import static java.nio.file.StandardCopyOption.COPY_ATTRIBUTES;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.stream.Stream;
import org.hedgerow.app.SeededData;

/**
 * Where the scenarios take place: a temporary folder with a filled bank, of which each scenario
 * gets a copy.
 */
final class Ground implements AutoCloseable {
  private static final String DATA = "data";

  private final Path folder;
  private final Crew crew;
  private final SuiteOptions options;

  private Ground(Path folder, Crew crew, SuiteOptions options) {
    this.folder = folder;
    this.crew = crew;
    this.options = options;
  }

  static Ground prepare(SuiteOptions options) throws IOException {
    Path folder = Files.createTempDirectory("hedgerow-faults");
    SeededData.copyInto(folder);
    return new Ground(folder, Crew.join(folder.resolve(DATA)), options);
  }

  Crew crew() {
    return crew;
  }

  SuiteOptions options() {
    return options;
  }

  /** A number of times, or a few if the suite is to be quick. */
  int times(int full, int quick) {
    return options.quick() ? quick : full;
  }

  Duration lasting(Duration full, Duration quick) {
    return options.quick() ? quick : full;
  }

  /** A new folder in which {@code data} is a copy of the filled bank. */
  Path withBank(String name) {
    Path place = empty(name);
    copy(folder.resolve(DATA), place.resolve(DATA));
    return place;
  }

  Path empty(String name) {
    try {
      return Files.createTempDirectory(folder, name);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Copies the filled bank into a folder that isn't there yet. */
  void copyBank(Path target) {
    copy(folder.resolve(DATA), target);
  }

  private static void copy(Path source, Path target) {
    try (Stream<Path> files = Files.walk(source)) {
      for (Path file : files.toList()) {
        Path copy = target.resolve(source.relativize(file).toString());
        Files.copy(file, copy, COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
      }
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  static void delete(Path tree) {
    try (Stream<Path> files = Files.walk(tree)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  @Override
  public void close() {
    delete(folder);
  }
}
