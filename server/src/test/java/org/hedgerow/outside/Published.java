package org.hedgerow.outside;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;

/** Published tables that the project did not make; each file names its source. */
final class Published {

  private Published() {}

  /** The rows of a tab-separated table, comments left out. */
  static List<List<String>> rows(String file) {
    try (InputStream stream = Published.class.getResourceAsStream("/published/" + file)) {
      return new String(Objects.requireNonNull(stream, file).readAllBytes(), UTF_8)
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> List.of(line.split("\t", -1)))
          .toList();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
