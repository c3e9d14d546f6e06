package org.hedgerow.store.database;

import org.jdbi.v3.core.Handle;

/**
 * Work that one Hedgerow does for all on the same database; held until the transaction ends
 * (PostgreSQL's manual, "Advisory Locks").
 */
public enum AdvisoryLock {
  FILLING(7_310_001),
  DEMO(7_310_002);

  private static final long POLL_MILLISECONDS = 200;

  private final long key;

  AdvisoryLock(long key) {
    this.key = key;
  }

  /**
   * Asks again and again while another holds it: a statement that waited would run into the limits
   * of connections.
   *
   * @param waiting run before waiting
   */
  public void take(Handle handle, Runnable waiting) {
    Runnable once = waiting;
    while (!isTaken(handle)) {
      once.run();
      once = () -> {};
      pause();
    }
  }

  private boolean isTaken(Handle handle) {
    return handle
        .createQuery("select pg_try_advisory_xact_lock(:key)")
        .bind("key", key)
        .mapTo(Boolean.class)
        .one();
  }

  private static void pause() {
    try {
      Thread.sleep(POLL_MILLISECONDS);
    } catch (InterruptedException interruption) {
      Thread.currentThread().interrupt();
      throw new DatabaseUnavailableException("Waiting for another Hedgerow was broken off.");
    }
  }
}
