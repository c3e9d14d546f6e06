package org.hedgerow.store.database;

import java.time.Duration;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Notices a write that doesn't end: decisions and other changes, and showing the editions that they
 * publish. Statements have time limits of their own, so that only an error in the program can be
 * why. Thread-safe; to ask it takes no lock.
 */
public final class StuckWriteMonitor {
  /** A write that takes longer is stuck. */
  static final Duration LIMIT = Duration.ofSeconds(30);

  private final LongSupplier nanoseconds;
  private final Set<Write> writes = ConcurrentHashMap.newKeySet();

  /** Compared by identity: two may begin at the same time. */
  private static final class Write {
    private final long begun;

    Write(long begun) {
      this.begun = begun;
    }
  }

  StuckWriteMonitor() {
    this(System::nanoTime);
  }

  /**
   * @param nanoseconds a clock that only counts on
   */
  StuckWriteMonitor(LongSupplier nanoseconds) {
    this.nanoseconds = nanoseconds;
  }

  public <R> R over(Supplier<R> work) {
    Write write = new Write(nanoseconds.getAsLong());
    writes.add(write);
    try {
      return work.get();
    } finally {
      writes.remove(write);
    }
  }

  public boolean isStuck() {
    long now = nanoseconds.getAsLong();
    return writes.stream().anyMatch(write -> now - write.begun > LIMIT.toNanos());
  }
}
