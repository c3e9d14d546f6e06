package org.hedgerow.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.hedgerow.operations.StorageFullException;
import org.hedgerow.operations.UnavailableException;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(20)
class OutageTest {
  private final AtomicBoolean up = new AtomicBoolean();
  private final AtomicInteger tries = new AtomicInteger();
  private final CountDownLatch tried = new CountDownLatch(3);
  private final Outage outage =
      new Outage(this::answers, StorageRoom.elsewhere(), Duration.ofMillis(5));

  private boolean answers() {
    tries.incrementAndGet();
    tried.countDown();
    return up.get();
  }

  private static SQLException unreachable() {
    return new SQLTransientConnectionException("waited too long", new SQLException("no", "08001"));
  }

  @Test
  void lastsUntilTheDatabaseAnswers() throws Exception {
    assertThat(outage.isOn()).isFalse();
    outage.failedToConnect(unreachable());
    outage.failedToConnect(unreachable());
    assertThat(outage.isOn()).isTrue();
    tried.await();
    assertThat(outage.isOn()).isTrue();
    up.set(true);
    awaitEnd();
    int before = tries.get();
    Thread.sleep(50);
    assertThat(tries.get()).as("nobody tries any more").isEqualTo(before);
  }

  @Test
  void canBeginAgain() throws Exception {
    up.set(true);
    outage.failedToConnect(unreachable());
    awaitEnd();
    up.set(false);
    outage.failedToConnect(unreachable());
    assertThat(outage.isOn()).isTrue();
    outage.close();
    awaitEnd();
  }

  @Test
  void manyWhoAskAreNone() throws Exception {
    up.set(true);
    outage.failedToConnect(new SQLTransientConnectionException("all are lent out"));
    assertThat(outage.isOn()).isFalse();
    awaitTry();
    assertThat(outage.isOn()).isFalse();
  }

  /** A pool whose connections all hang gives none either, and doesn't know why. */
  @Test
  void aPoolThatGivesNothingIsLookedInto() throws Exception {
    outage.failedToConnect(new SQLTransientConnectionException("all are lent out"));
    tried.await();
    assertThat(outage.isOn()).isTrue();
  }

  private void awaitTry() throws InterruptedException {
    while (tries.get() == 0) {
      Thread.sleep(1);
    }
  }

  private static RuntimeException failed(SQLException problem) {
    return new UnableToExecuteStatementException(problem, null);
  }

  @ParameterizedTest
  @ValueSource(strings = {"08006", "57P01", "57014", "53300", "25006", "55P03", "40P01"})
  void whatPassesIsUnavailable(String state) {
    up.set(true);
    assertThatThrownBy(() -> outage.told(() -> fail("no", state)))
        .isExactlyInstanceOf(UnavailableException.class);
  }

  @Test
  void otherFaultsStayWhatTheyAre() {
    assertThatThrownBy(() -> outage.told(() -> fail("duplicate key", "23505")))
        .isInstanceOf(UnableToExecuteStatementException.class);
  }

  @ParameterizedTest
  @CsvSource({
    "53100, could not extend file: No space left on device",
    "58030, could not write file: No space left on device",
    "XX000, could not write to file pg_wal/xlogtemp.1: No space left on device"
  })
  void saysThatTheDiskIsFull(String state, String message) {
    assertThatThrownBy(() -> outage.toldWriting(() -> fail(message, state)))
        .isInstanceOf(StorageFullException.class);
    assertThat(outage.refusesWrites()).isTrue();
    assertThat(outage.told(() -> "read")).isEqualTo("read");
    assertThatThrownBy(() -> outage.toldWriting(() -> "not tried"))
        .isInstanceOf(StorageFullException.class);
  }

  private static String fail(String message, String state) {
    throw failed(new SQLException(message, state));
  }

  private void awaitEnd() throws InterruptedException {
    while (outage.isOn()) {
      Thread.sleep(1);
    }
  }
}
