package org.hedgerow.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class OutageTest {
  private final AtomicBoolean up = new AtomicBoolean();
  private final AtomicInteger tries = new AtomicInteger();
  private final CountDownLatch tried = new CountDownLatch(3);
  private final Outage outage = new Outage(this::answers, Duration.ofMillis(5));

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
  void manyWhoAskAreNone() {
    outage.failedToConnect(new SQLTransientConnectionException("all are lent out"));
    assertThat(outage.isOn()).isFalse();
    assertThat(tries).hasValue(0);
  }

  private void awaitEnd() throws InterruptedException {
    while (outage.isOn()) {
      Thread.sleep(1);
    }
  }
}
