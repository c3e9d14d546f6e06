package org.hedgerow.web.security;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/**
 * Lets little of some costly work run at a time, so that processors are left for everything else. A
 * few more requests wait a moment for their turn; all others are refused at once, since whoever
 * waits holds a thread. Thread-safe.
 */
public final class ConcurrencyLimit {
  private final Semaphore running;
  private final Semaphore admitted;
  private final Duration patience;
  private final String advice;

  /**
   * @param atATime how many run at a time
   * @param waiting how many wait at most
   * @param patience how long each waits at most
   * @param advice what is said to those who are refused
   */
  public ConcurrencyLimit(int atATime, int waiting, Duration patience, String advice) {
    this.running = new Semaphore(atATime, true);
    this.admitted = new Semaphore(atATime + waiting);
    this.patience = patience;
    this.advice = advice;
  }

  /**
   * @throws ProblemException 503 with {@code Retry-After} if it isn't its turn in time
   */
  public <T> T take(Context context, Supplier<T> work) {
    if (!admitted.tryAcquire()) {
      throw busy(context);
    }
    try {
      return inTurn(context, work);
    } finally {
      admitted.release();
    }
  }

  private <T> T inTurn(Context context, Supplier<T> work) {
    if (!hasTurn()) {
      throw busy(context);
    }
    try {
      return work.get();
    } finally {
      running.release();
    }
  }

  private boolean hasTurn() {
    try {
      return running.tryAcquire(patience.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private ProblemException busy(Context context) {
    context.header(Header.RETRY_AFTER, Long.toString(Math.max(1, patience.toSeconds())));
    return Problem.of(ProblemType.UNAVAILABLE, advice).exception();
  }
}
