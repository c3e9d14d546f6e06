package org.hedgerow.store;

import java.sql.SQLException;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.hedgerow.accounts.UnavailableException;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;

/**
 * Knows that the database can't be reached. Without that, every request that needs it would hold a
 * thread until the pool gives up, and reads from memory would wait for a thread. Meanwhile a thread
 * of its own, and nobody else, tries again. Safe for use by several threads.
 */
final class Outage implements AutoCloseable {
  private static final String SILENT = "The database doesn't answer.";
  private static final Duration PAUSE = Duration.ofSeconds(1);

  private final BooleanSupplier answers;
  private final Duration pause;
  private final AtomicBoolean on = new AtomicBoolean();
  private volatile boolean closed;

  /**
   * @param answers whether the database answers just now
   */
  Outage(BooleanSupplier answers) {
    this(answers, PAUSE);
  }

  Outage(BooleanSupplier answers, Duration pause) {
    this.answers = answers;
    this.pause = pause;
  }

  /**
   * What some work with the database gives.
   *
   * @throws UnavailableException if the database doesn't answer
   */
  <R> R told(Supplier<R> work) {
    if (isOn()) {
      throw new UnavailableException(SILENT);
    }
    try {
      return work.get();
    } catch (ConnectionException problem) {
      failedToConnect(problem);
      throw new UnavailableException(SILENT, problem);
    } catch (JdbiException problem) {
      throw isBroken(problem) ? new UnavailableException(SILENT, problem) : problem;
    }
  }

  private static boolean isBroken(JdbiException problem) {
    return problem.getCause() instanceof SQLException cause && isConnectionProblem(cause);
  }

  boolean isOn() {
    return on.get();
  }

  /** A connection that breaks needn't mean that no other can be had; that none can be had does. */
  void failedToConnect(Throwable problem) {
    if (isUnreachable(problem) && on.compareAndSet(false, true)) {
      Thread thread = new Thread(this::await, "wait-for-database");
      thread.setDaemon(true);
      thread.start();
    }
  }

  private void await() {
    try {
      while (!closed && !answers.getAsBoolean()) {
        Thread.sleep(pause.toMillis());
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    } finally {
      on.set(false);
    }
  }

  /** Not so where the pool has no connection left because all are lent out. */
  private static boolean isUnreachable(Throwable problem) {
    for (@Nullable Throwable cause = problem; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLException sql && isConnectionProblem(sql)) {
        return true;
      }
    }
    return false;
  }

  /** PostgreSQL's classes 08, connection exceptions, and 57, operator intervention. */
  private static boolean isConnectionProblem(SQLException problem) {
    return String.valueOf(problem.getSQLState()).matches("(08|57).*");
  }

  @Override
  public void close() {
    closed = true;
  }
}
