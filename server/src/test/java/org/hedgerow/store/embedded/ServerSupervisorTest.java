package org.hedgerow.store.embedded;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.junit.jupiter.api.Test;

/** A server that ended is started again, a few times. */
class ServerSupervisorTest {
  private static final ServerSupervisor.Times FAST =
      new ServerSupervisor.Times(Duration.ofMillis(2), Duration.ofMillis(1), Duration.ofMinutes(1));

  private final AtomicBoolean runs = new AtomicBoolean();
  private final AtomicInteger starts = new AtomicInteger();
  private final BlockingQueue<String> lost = new LinkedBlockingQueue<>();

  private ServerSupervisor watch(Runnable start) {
    return ServerSupervisor.over(runs::get, start, lost::add, FAST);
  }

  @Test
  void startsAgainWhatEnded() throws InterruptedException {
    CountDownLatch started = new CountDownLatch(1);
    try (ServerSupervisor watch =
        watch(
            () -> {
              if (starts.incrementAndGet() == 3) {
                runs.set(true);
                started.countDown();
              } else {
                throw new DatabaseUnavailableException("Not yet.");
              }
            })) {
      assertThat(started.await(10, TimeUnit.SECONDS)).isTrue();
      assertThat(watch).isNotNull();
    }
    assertThat(starts).hasValue(3);
    assertThat(lost).isEmpty();
  }

  @Test
  void givesUpWithTheLastReason() throws InterruptedException {
    try (ServerSupervisor watch =
        watch(
            () -> {
              throw new DatabaseUnavailableException("Try " + starts.incrementAndGet() + ".");
            })) {
      assertThat(lost.poll(10, TimeUnit.SECONDS))
          .isEqualTo("The embedded database ended and can't be started again. Try 5.");
      assertThat(watch).isNotNull();
    }
  }

  /** One that ends as soon as it has started would else be started for ever. */
  @Test
  void givesUpOnAServerThatNeverStays() throws InterruptedException {
    try (ServerSupervisor watch = watch(starts::incrementAndGet)) {
      assertThat(lost.poll(10, TimeUnit.SECONDS)).contains("again and again");
      assertThat(watch).isNotNull();
    }
    assertThat(starts).hasValue(5);
  }

  @Test
  void breaksOffAStartWhenClosed() throws InterruptedException {
    CountDownLatch starting = new CountDownLatch(1);
    CountDownLatch brokenOff = new CountDownLatch(1);
    try (ServerSupervisor watch =
        watch(
            () -> {
              starting.countDown();
              try {
                TimeUnit.MINUTES.sleep(1);
              } catch (InterruptedException expected) {
                brokenOff.countDown();
                throw new DatabaseUnavailableException("Broken off.", expected);
              }
            })) {
      assertThat(starting.await(10, TimeUnit.SECONDS)).isTrue();
      assertThat(watch).isNotNull();
    }
    assertThat(brokenOff.await(0, TimeUnit.SECONDS)).isTrue();
    assertThat(lost).isEmpty();
  }
}
