package org.hedgerow.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.store.TestDatabase;
import org.hedgerow.store.editions.BankFiller;
import org.hedgerow.store.editions.SeededEdition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When the seed is needed, and what happens if it can't be used. */
class SeedTaskIT {
  private final StringWriter out = new StringWriter();
  private TestDatabase database;

  @TempDir private Path folder;

  @BeforeEach
  void open() {
    database = TestDatabase.open();
  }

  @AfterEach
  void drop() {
    database.close();
  }

  private int run(SeedTask task) {
    return task.run(database.bank(), new PrintWriter(out, true));
  }

  @Test
  void needsNoSeedForABankThatIsFilled() {
    new BankFiller(database.bank())
        .fill(() -> SeededEdition.of("boat", "wool"), "A test.", () -> {});
    SeedTask task =
        new SeedTask(
            () -> {
              throw new AssertionError("the seed was asked for");
            });
    assertThat(run(task)).isZero();
    assertThat(out.toString())
        .isEqualToIgnoringNewLines("The word bank is filled already; nothing was changed.");
  }

  @Test
  void saysInOneLineWhichSeedFileIsMissing() throws IOException {
    Files.createFile(folder.resolve("manifest.sha256"));
    assertThatThrownBy(() -> run(new SeedTask(() -> SeedLexicon.inFolder(folder))))
        .isInstanceOf(CommandFailedException.class)
        .hasMessageContaining("is missing")
        .message()
        .hasLineCount(1);
    assertThat(new BankFiller(database.bank()).isEmpty()).isTrue();
  }

  @Test
  void saysInOneLineWhichSeedFileWasChanged() throws IOException {
    String file = "weights/weights.tsv";
    Files.writeString(folder.resolve("manifest.sha256"), "0".repeat(64) + "  " + file + "\n");
    Files.createDirectories(folder.resolve("weights"));
    Files.createFile(folder.resolve(file));
    assertThatThrownBy(() -> run(new SeedTask(() -> SeedLexicon.inFolder(folder))))
        .isInstanceOf(CommandFailedException.class)
        .hasMessageContaining("weights/weights.tsv does not match its checksum")
        .message()
        .hasLineCount(1);
    assertThat(new BankFiller(database.bank()).isEmpty()).isTrue();
  }
}
