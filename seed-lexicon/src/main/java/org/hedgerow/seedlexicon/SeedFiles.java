package org.hedgerow.seedlexicon;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Where seed files are read from; paths are relative to the seed folder and use {@code /}. */
@FunctionalInterface
interface SeedFiles {

  /** Opens a file, or answers null where there is none. */
  @Nullable InputStream open(String path) throws IOException;

  static SeedFiles onClassPath() {
    return path -> SeedFiles.class.getResourceAsStream("/seed/" + path);
  }

  static SeedFiles inFolder(Path folder) {
    return path -> {
      Path file = folder.resolve(path);
      return Files.isRegularFile(file) ? Files.newInputStream(file) : null;
    };
  }

  /** The whole content of a file. */
  default byte[] content(String path) {
    try (InputStream stream = open(path)) {
      if (stream == null) {
        throw DamagedSeedException.missing(path);
      }
      return stream.readAllBytes();
    } catch (IOException e) {
      throw DamagedSeedException.unreadable(path, e.getClass().getSimpleName());
    }
  }
}
