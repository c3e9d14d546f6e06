package org.hedgerow.store.database;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Whether the disk of the database has room for writes. Of an embedded database the free space is
 * known, and writes are refused a little before the end: PostgreSQL itself still needs room then,
 * and crashes when it can't write its log. Of any other database it is known only from what it
 * answers. Thread-safe.
 */
public final class StorageRoom {
  private static final Logger LOG = LoggerFactory.getLogger(StorageRoom.class);

  /** A segment of PostgreSQL's write-ahead log has 16 MB. */
  static final long MIN_BYTES = 24L * 1024 * 1024;

  /** For so long the disk is taken to be full after the database said so. */
  private static final Duration REMEMBERED = Duration.ofSeconds(10);

  private static final Duration BETWEEN_LINES = Duration.ofMinutes(1);
  private static final long NEVER = Long.MIN_VALUE;

  private final LongSupplier freeBytes;
  private final LongSupplier nanoseconds;
  private final AtomicLong reported = new AtomicLong(NEVER);
  private final AtomicLong logged = new AtomicLong(NEVER);

  /**
   * @param freeBytes on the disk; {@link Long#MAX_VALUE} if that isn't known
   * @param nanoseconds a clock that only counts on
   */
  StorageRoom(LongSupplier freeBytes, LongSupplier nanoseconds) {
    this.freeBytes = freeBytes;
    this.nanoseconds = nanoseconds;
  }

  /** Of a disk that can't be looked at. */
  public static StorageRoom elsewhere() {
    return new StorageRoom(() -> Long.MAX_VALUE, System::nanoTime);
  }

  /** Of the disk that a reserve is on. What the reserve needs to come back isn't free. */
  public static StorageRoom of(DiskReserve ballast) {
    return new StorageRoom(
        () -> freeBytes(ballast.folder()) - ballast.missingBytes(), System::nanoTime);
  }

  static long freeBytes(Path folder) {
    try {
      FileStore disk = Files.getFileStore(folder);
      return disk.getUsableSpace();
    } catch (IOException unknown) {
      return Long.MAX_VALUE;
    }
  }

  boolean isFull() {
    boolean full = isLow() || isWithin(REMEMBERED, reported.get());
    if (full) {
      log();
    }
    return full;
  }

  /** Whether a database that stopped may have stopped for want of room. */
  boolean isLow() {
    return freeBytes.getAsLong() < MIN_BYTES;
  }

  /** The database said that its disk is full. */
  void report() {
    reported.set(nanoseconds.getAsLong());
    log();
  }

  private boolean isWithin(Duration time, long since) {
    return since != NEVER && nanoseconds.getAsLong() - since < time.toNanos();
  }

  private void log() {
    long last = logged.get();
    if (!isWithin(BETWEEN_LINES, last) && logged.compareAndSet(last, nanoseconds.getAsLong())) {
      LOG.error(
          "The disk of the database is full: reading goes on, nothing is stored until there is room.");
    }
  }
}
