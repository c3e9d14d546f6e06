package org.hedgerow.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands of the built program beside a server on the same folder. */
class LookUpJarIT {
  @TempDir private static Path folder;
  private static RunningJar server;

  @BeforeAll
  static void serve() throws InterruptedException {
    SeededData.copyInto(folder);
    server = RunningJar.start(folder, "serve", "--port", "0");
    server.awaitReady();
  }

  @AfterAll
  static void stop() throws InterruptedException {
    assertThat(server.stop()).isZero();
    server.close();
  }

  @Test
  void readsAFilledBankWithoutFillingItAgain() {
    assertThat(server.out()).doesNotContain("Filling");
  }

  @Test
  void listsWords() throws Exception {
    try (RunningJar list = RunningJar.start(folder, "list", "oa", "--limit", "5")) {
      assertThat(list.awaitExit()).isZero();
      assertThat(list.out()).contains("boat\n").hasLineCount(5);
      assertThat(list.errors()).isEmpty();
    }
  }

  @Test
  void namesTheNearestPhonogramInOneLine() throws Exception {
    try (RunningJar list = RunningJar.start(folder, "list", "ao")) {
      assertThat(list.awaitExit()).isEqualTo(1);
      assertThat(list.errors()).contains("oa").hasLineCount(1);
      assertThat(list.out()).isEmpty();
    }
  }

  @Test
  void saysInOneLineThatAServerHoldsTheFolder() throws Exception {
    try (RunningJar seed = RunningJar.start(folder, "seed")) {
      assertThat(seed.awaitExit()).isEqualTo(1);
      assertThat(seed.errors()).contains("in use by another Hedgerow").hasLineCount(1);
    }
  }
}
