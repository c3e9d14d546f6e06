package org.hedgerow.seedlexicon;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A seed folder that isn't what its manifest says gives one sentence with the file and the way out.
 */
final class DamagedSeedTest {
  private static final String TABLE = "scowl/commonness.tsv";
  private static final String GOOD = "# word\tsize\tregion\nhedge\t20\t\n";

  @TempDir Path folder;

  @BeforeEach
  void writeGoodSeed() throws IOException {
    write(GOOD);
    writeManifest(GOOD);
  }

  @Test
  void readsASoundFile() {
    assertThat(SeedLexicon.inFolder(folder).commonness())
        .extracting(CommonnessRow::word)
        .containsExactly("hedge");
  }

  @Test
  void refusesAChangedFile() throws IOException {
    write(GOOD.replace("20", "10"));

    assertDamaged("does not match its checksum");
  }

  @Test
  void refusesATruncatedFile() throws IOException {
    write(GOOD.substring(0, GOOD.length() - 3));

    assertDamaged("does not match its checksum");
  }

  @Test
  void refusesAMissingFile() throws IOException {
    Files.delete(folder.resolve(TABLE));

    assertDamaged("is missing");
  }

  @Test
  void refusesAFolderInThePlaceOfAFile() throws IOException {
    Files.delete(folder.resolve(TABLE));
    Files.createDirectory(folder.resolve(TABLE));

    assertDamaged("is missing");
  }

  @Test
  void refusesAFileTheManifestDoesNotKnow() throws IOException {
    Files.writeString(folder.resolve(Manifest.FILE), "");

    assertDamaged("is not in the checksum manifest");
  }

  @Test
  void refusesADamagedManifest() throws IOException {
    Files.writeString(folder.resolve(Manifest.FILE), "nonsense\n");

    assertThatThrownBy(() -> SeedLexicon.inFolder(folder))
        .isInstanceOf(DamagedSeedException.class)
        .hasMessageContaining("manifest.sha256")
        .hasMessageContaining("line 1")
        .hasMessageContaining("derive.sh");
  }

  @Test
  void refusesAFolderWithoutManifest(@TempDir Path empty) {
    assertThatThrownBy(() -> SeedLexicon.inFolder(empty))
        .isInstanceOf(DamagedSeedException.class)
        .hasMessageContaining("manifest.sha256 is missing");
  }

  @Test
  void namesTheLineOfAMistakeThatWasAcceptedIntoTheManifest() throws IOException {
    String wrong = GOOD + "row\tmany\t\n";
    write(wrong);
    writeManifest(wrong);

    assertDamaged("line 3, whose column \"size\" is no whole number: \"many\"");
  }

  private void assertDamaged(String problem) {
    assertThatThrownBy(() -> SeedLexicon.inFolder(folder).commonness())
        .isInstanceOf(DamagedSeedException.class)
        .hasMessageContaining(TABLE)
        .hasMessageContaining(problem)
        .hasMessageContaining("seed-lexicon/derive/derive.sh")
        .hasMessageEndingWith(".")
        .hasMessageNotContaining("\n");
  }

  private void write(String content) throws IOException {
    Path file = folder.resolve(TABLE);
    Files.createDirectories(folder.resolve("scowl"));
    Files.writeString(file, content);
  }

  private void writeManifest(String content) throws IOException {
    String line = Manifest.checksum(content.getBytes(UTF_8)) + "  " + TABLE + "\n";
    Files.writeString(folder.resolve(Manifest.FILE), line);
  }
}
