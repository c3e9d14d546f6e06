package org.hedgerow.store.database;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.hedgerow.operations.StorageFullException;
import org.hedgerow.operations.UnavailableException;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.JdbiException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Knows that the database can't be reached or stores nothing. Without that, every request that
 * needs it would hold a thread until the pool gives up, and reads from memory would wait for a
 * thread. Meanwhile a thread of its own, and nobody else, tries again. Safe for use by several
 * threads.
 */
public final class Outage implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Outage.class);
  private static final String SILENT = "The database doesn't answer.";
  private static final Duration PAUSE = Duration.ofSeconds(1);

  private final BooleanSupplier answers;
  private final StorageRoom room;
  private final Duration pause;
  private final StuckWriteMonitor writes = new StuckWriteMonitor();
  private final AtomicBoolean on = new AtomicBoolean();
  private final AtomicBoolean trying = new AtomicBoolean();
  private volatile boolean closed;

  /**
   * @param answers whether the database answers just now, asked on a connection beside the pool
   */
  public Outage(BooleanSupplier answers, StorageRoom room) {
    this(answers, room, PAUSE);
  }

  public Outage(BooleanSupplier answers, StorageRoom room, Duration pause) {
    this.answers = answers;
    this.room = room;
    this.pause = pause;
  }

  /**
   * What some work with the database gives.
   *
   * @throws UnavailableException if the database doesn't answer
   * @throws org.hedgerow.operations.DamagedRecordsException if it finds its files damaged
   */
  public <R> R told(Supplier<R> work) {
    if (isOn()) {
      throw silent();
    }
    try {
      return work.get();
    } catch (JdbiException problem) {
      DamagedData.refuse(problem);
      throw understood(problem);
    }
  }

  /**
   * The same for work that stores something; not begun if there is no room for it.
   *
   * @throws StorageFullException if the disk of the database is full
   */
  public <R> R toldWriting(Supplier<R> work) {
    if (room.isFull()) {
      throw new StorageFullException();
    }
    return writes.over(() -> told(work));
  }

  /** A database that stopped because its disk is full doesn't answer either. */
  private UnavailableException silent() {
    return room.isLow() ? new StorageFullException() : new UnavailableException(SILENT);
  }

  private RuntimeException understood(JdbiException problem) {
    if (SqlStates.isStorageFull(problem)) {
      room.report();
      return new StorageFullException(problem);
    }
    if (problem instanceof ConnectionException) {
      failedToConnect(problem);
    } else if (SqlStates.isConnectionProblem(problem)) {
      suspect();
    } else if (!SqlStates.isPassing(problem)) {
      return problem;
    }
    return room.isLow()
        ? new StorageFullException(problem)
        : new UnavailableException(SILENT, problem);
  }

  boolean isOn() {
    return on.get();
  }

  /** Whether it is known that nothing can be stored just now. */
  public boolean refusesWrites() {
    return isOn() || room.isFull();
  }

  /** Changes are told to it, and whatever they wait for. */
  public StuckWriteMonitor writes() {
    return writes;
  }

  /**
   * A pool that gave no connection may have lent out all of them; then the database still answers
   * others.
   */
  void failedToConnect(Throwable problem) {
    if (SqlStates.isConnectionProblem(problem)) {
      on.set(true);
    }
    suspect();
  }

  /** Finds out in the background whether the database answers at all. */
  private void suspect() {
    if (trying.compareAndSet(false, true)) {
      Thread thread = new Thread(this::await, "wait-for-database");
      thread.setDaemon(true);
      thread.start();
    }
  }

  private void await() {
    try {
      boolean told = false;
      while (!closed && !answers.getAsBoolean()) {
        on.set(true);
        if (!told) {
          LOG.warn("The database doesn't answer: reading goes on, nothing is stored.");
        }
        told = true;
        Thread.sleep(pause.toMillis());
      }
      if (told && !closed) {
        LOG.info("The database answers again.");
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    } finally {
      on.set(false);
      trying.set(false);
    }
  }

  @Override
  public void close() {
    closed = true;
  }
}
