package org.hedgerow.store.database;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Timer;
import java.util.TimerTask;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A file of zeros that keeps room for PostgreSQL: on a disk that is full to the last byte it can't
 * start, not even to be read from, since it writes a lock file and recovers by its log. The file is
 * given up then, and made again once there is plenty of room.
 */
public final class DiskReserve {
  private static final Logger LOG = LoggerFactory.getLogger(DiskReserve.class);

  /** Two segments of the write-ahead log and what sorting may take. */
  static final int BYTES = 48 * 1024 * 1024;

  private static final long MINUTE = Duration.ofMinutes(1).toMillis();

  /** Not while the server starts. */
  private static final long SOON = Duration.ofSeconds(10).toMillis();

  private static final int CHUNK = 1024 * 1024;

  private final Path folder;
  private final Path file;

  public DiskReserve(Path folder) {
    this.folder = folder;
    this.file = folder.resolve("reserve");
  }

  /** From now on takes the room again, within a minute, whenever that is possible. */
  public Timer watch() {
    Timer timer = new Timer("take-reserve", true);
    timer.schedule(
        new TimerTask() {
          @Override
          public void run() {
            takeIfPossible();
          }
        },
        SOON,
        MINUTE);
    return timer;
  }

  Path folder() {
    return folder;
  }

  /** How much was given up and isn't taken again yet. */
  int missingBytes() {
    return Files.exists(file) ? 0 : BYTES;
  }

  /** Gives the room to whoever needs it, if there is little left. */
  public void giveUpIfNeeded() {
    if (StorageRoom.freeBytes(folder) < StorageRoom.MIN_BYTES && delete()) {
      LOG.warn("The disk is full. The reserve in {} is given up, so that PostgreSQL starts.", file);
    }
  }

  /** Takes the room again, if more than enough would be left. */
  public void takeIfPossible() {
    if (!Files.exists(file) && StorageRoom.freeBytes(folder) > BYTES + 2 * StorageRoom.MIN_BYTES) {
      fill();
    }
  }

  /** Zeros take room; a file that is only made longer needn't. */
  private void fill() {
    try (OutputStream out = Files.newOutputStream(file)) {
      for (int written = 0; written < BYTES; written += CHUNK) {
        out.write(new byte[CHUNK]);
      }
    } catch (IOException problem) {
      LOG.warn("No reserve can be kept in {}: {}", file, problem.getMessage());
      delete();
    }
  }

  private boolean delete() {
    try {
      return Files.deleteIfExists(file);
    } catch (IOException problem) {
      return false;
    }
  }
}
