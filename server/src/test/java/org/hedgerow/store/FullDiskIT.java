package org.hedgerow.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.OptionalInt;
import org.hedgerow.operations.StorageFullException;
import org.hedgerow.store.database.DiskReserve;
import org.hedgerow.store.editions.BankFiller;
import org.hedgerow.store.editions.EditionReader;
import org.hedgerow.store.editions.EditionWriter;
import org.hedgerow.store.editions.FirstEdition;
import org.hedgerow.store.editions.SeededEdition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The data folder is on a small disk, which somebody else fills to the last byte. */
@Timeout(180)
class FullDiskIT {
  private static final FirstEdition FIRST =
      SeededEdition.of("boat", "wool", "ship", "stripe", "eye");

  @TempDir private Path parent;

  private Path disk;
  private boolean mounted;

  /** Needs root and its rights; where tests must not be left out, that is a failure. */
  @BeforeEach
  void mount() throws Exception {
    disk = Files.createDirectory(parent.resolve("disk"));
    mounted = run("mount", "-t", "tmpfs", "-o", "size=300m", "tmpfs", disk.toString()) == 0;
    assumeTrue(mounted || "true".equals(System.getenv("CI")), "no small disk can be mounted");
    assertThat(mounted).as("a small disk can be mounted").isTrue();
  }

  @AfterEach
  void unmount() throws Exception {
    if (mounted) {
      run("umount", "-l", disk.toString());
    }
  }

  private static int run(String... command) throws IOException, InterruptedException {
    return new ProcessBuilder(command).start().waitFor();
  }

  private BankDatabase open() {
    return BankDatabase.embedded(disk.resolve("data"), TestServer.engine());
  }

  @Test
  void readsGoOnAlsoAfterARestartAndWritesOnceThereIsRoom() throws Exception {
    try (BankDatabase bank = open()) {
      new BankFiller(bank).fill(() -> FIRST, "The first.", () -> {});
      new DiskReserve(disk.resolve("data")).takeIfPossible();
      assertThat(withdraw(bank, "boat")).isEqualTo(2);
      fill();
      assertRefusesWrites(bank);
      assertEnds(bank);
    }
    assertThat(disk.resolve("data/reserve")).exists();
    try (BankDatabase bank = open()) {
      assertThat(new EditionReader(bank).first().words()).hasSize(5);
      assertThat(disk.resolve("data/reserve")).doesNotExist();
      assertRefusesWrites(bank);
      Files.delete(disk.resolve("filler"));
      assertThat(bank.takesWrites()).isTrue();
      assertThat(withdraw(bank, "ship")).as("nothing was half done").isEqualTo(3);
    }
  }

  private void fill() throws IOException {
    try (OutputStream out = Files.newOutputStream(disk.resolve("filler"))) {
      byte[] zeros = new byte[64 * 1024];
      while (true) {
        out.write(zeros);
      }
    } catch (IOException full) {
      assertThat(full).hasMessageContaining("No space left");
    }
  }

  private static void assertRefusesWrites(BankDatabase bank) {
    assertThatThrownBy(() -> withdraw(bank, "wool")).isInstanceOf(StorageFullException.class);
    assertThat(bank.takesWrites()).isFalse();
    assertThat(new EditionReader(bank).newestNumber()).isEqualTo(2);
  }

  /** Where others write into the database all the same, it says itself that the disk is full. */
  private static void assertEnds(BankDatabase bank) {
    assertThatThrownBy(
            () ->
                bank.outage()
                    .told(
                        () ->
                            bank.jdbi()
                                .withHandle(
                                    handle ->
                                        handle.execute(
                                            "create table more as select repeat(md5(n::text), 30) as text"
                                                + " from generate_series(1, 100000) as n"))))
        .isInstanceOf(StorageFullException.class);
  }

  private static int withdraw(BankDatabase bank, String spelling) {
    return bank.outage()
        .toldWriting(
            () ->
                bank.jdbi()
                    .inTransaction(
                        handle -> {
                          EditionWriter writer = new EditionWriter(handle, FIRST.accents());
                          int edition =
                              writer.publish(
                                  "A test.",
                                  OptionalInt.empty(),
                                  OptionalInt.empty(),
                                  Instant.EPOCH);
                          writer.withdraw(spelling, edition);
                          return edition;
                        }));
  }
}
