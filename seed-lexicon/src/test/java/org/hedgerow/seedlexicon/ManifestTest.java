package org.hedgerow.seedlexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The build fails here when a seed file was changed without writing the manifest again. */
final class ManifestTest {
  private static final Path SEED = Path.of("src/main/resources/seed");

  @Test
  void listsEveryFileWithItsChecksum() throws IOException {
    Manifest manifest = Manifest.parse(Files.readAllBytes(SEED.resolve(Manifest.FILE)));

    assertThat(manifest.checksums())
        .as(
            "Seed files and manifest disagree: run seed-lexicon/derive/derive.sh to derive them again,"
                + " or seed-lexicon/derive/derive.sh --manifest to accept what was corrected by hand")
        .isEqualTo(checksums());
  }

  @Test
  void everySourceTellsWhereItComesFrom() throws IOException {
    try (Stream<Path> folders = Files.list(SEED).filter(Files::isDirectory)) {
      assertThat(folders).allSatisfy(folder -> assertThat(folder.resolve("SOURCE.md")).exists());
    }
  }

  private static SortedMap<String, String> checksums() throws IOException {
    SortedMap<String, String> checksums = new TreeMap<>();
    try (Stream<Path> files = Files.walk(SEED).filter(Files::isRegularFile)) {
      for (Path file : files.toList()) {
        String path = SEED.relativize(file).toString().replace('\\', '/');
        if (!path.equals(Manifest.FILE)) {
          checksums.put(path, Manifest.checksum(Files.readAllBytes(file)));
        }
      }
    }
    return checksums;
  }
}
