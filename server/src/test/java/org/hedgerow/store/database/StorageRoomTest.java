package org.hedgerow.store.database;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StorageRoomTest {
  private final AtomicLong free = new AtomicLong(Long.MAX_VALUE);
  private final AtomicLong time = new AtomicLong();
  private final StorageRoom room = new StorageRoom(free::get, time::get);

  @TempDir private Path folder;

  @Test
  void isFullALittleBeforeTheEndAndNotOnceThereIsRoom() {
    free.set(StorageRoom.MIN_BYTES);
    assertThat(room.isFull()).isFalse();
    free.set(StorageRoom.MIN_BYTES - 1);
    assertThat(room.isFull()).isTrue();
    free.set(StorageRoom.MIN_BYTES);
    assertThat(room.isFull()).isFalse();
  }

  @Test
  void isFullForAWhileAfterTheDatabaseSaidSo() {
    room.report();
    assertThat(room.isFull()).isTrue();
    assertThat(room.isLow()).isFalse();
    time.addAndGet(Duration.ofSeconds(11).toNanos());
    assertThat(room.isFull()).isFalse();
  }

  @Test
  void theReserveTakesRoomAndIsKeptWhileThereIsPlenty() throws Exception {
    DiskReserve ballast = new DiskReserve(folder);
    assertThat(ballast.missingBytes()).isEqualTo(DiskReserve.BYTES);
    ballast.takeIfPossible();
    assertThat(ballast.missingBytes()).isZero();
    assertThat(Files.size(folder.resolve("reserve"))).isEqualTo(DiskReserve.BYTES);
    ballast.giveUpIfNeeded();
    assertThat(folder.resolve("reserve")).exists();
  }
}
