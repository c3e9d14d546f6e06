package org.hedgerow.store.embedded;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Starts a server again that ended by itself, in a thread of its own. After a few tries without a
 * minute of life between them it gives up.
 */
final class ServerSupervisor implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(ServerSupervisor.class);
  private static final int MAX_TRIES = 5;
  private static final int END_SECONDS = 15;

  /**
   * @param poll between looking whether the server runs
   * @param pause before the second try; doubled for each after it
   * @param stable after how long of running the tries are counted anew
   */
  record Times(Duration poll, Duration pause, Duration stable) {
    static final Times DEFAULT =
        new Times(Duration.ofMillis(300), Duration.ofMillis(500), Duration.ofMinutes(1));
  }

  private final BooleanSupplier runs;
  private final Runnable start;
  private final Consumer<String> lost;
  private final Times times;
  private final CountDownLatch closed = new CountDownLatch(1);
  private final Thread thread = new Thread(this::watch, "watch-database");
  private int tries;
  private long startedAt = System.nanoTime();
  private String reason = "It ended again and again";

  private ServerSupervisor(
      BooleanSupplier runs, Runnable start, Consumer<String> lost, Times times) {
    this.runs = runs;
    this.start = start;
    this.lost = lost;
    this.times = times;
  }

  /**
   * @param start throws a {@link DatabaseUnavailableException} where it fails
   * @param lost told why, in a sentence, when the server can't be started again
   */
  static ServerSupervisor over(
      BooleanSupplier runs, Runnable start, Consumer<String> lost, Times times) {
    ServerSupervisor watch = new ServerSupervisor(runs, start, lost, times);
    watch.thread.setDaemon(true);
    watch.thread.start();
    return watch;
  }

  private void watch() {
    while (!isClosed(times.poll())) {
      if (runs.getAsBoolean()) {
        if (System.nanoTime() - startedAt > times.stable().toNanos()) {
          tries = 0;
        }
      } else if (tries == MAX_TRIES) {
        lost.accept("The embedded database ended and can't be started again. " + reason);
        return;
      } else {
        tryAgain();
      }
    }
  }

  private void tryAgain() {
    Duration pause = tries == 0 ? Duration.ZERO : times.pause().multipliedBy(1L << (tries - 1));
    tries++;
    if (isClosed(pause)) {
      return;
    }
    try {
      LOG.warn("The embedded database has ended; starting it again (try {}).", tries);
      start.run();
      startedAt = System.nanoTime();
      LOG.info("The embedded database runs again.");
    } catch (DatabaseUnavailableException failure) {
      reason = String.valueOf(failure.getMessage());
    }
  }

  private boolean isClosed(Duration wait) {
    try {
      return closed.await(wait.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException interruption) {
      return true;
    }
  }

  /** Also breaks off a start that takes long. */
  @Override
  public void close() {
    closed.countDown();
    thread.interrupt();
    try {
      thread.join(TimeUnit.SECONDS.toMillis(END_SECONDS));
    } catch (InterruptedException interruption) {
      Thread.currentThread().interrupt();
    }
  }
}
