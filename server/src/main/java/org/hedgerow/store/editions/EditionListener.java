package org.hedgerow.store.editions;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import org.hedgerow.operations.UnavailableException;
import org.hedgerow.store.database.ConnectionProbe;
import org.hedgerow.store.database.DatabaseAddress;
import org.jspecify.annotations.Nullable;
import org.postgresql.PGConnection;
import org.postgresql.PGNotification;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Listens on a connection of its own for new editions, in a thread of its own. A connection that
 * breaks is made again; because an announcement may be lost meanwhile, it looks then and every half
 * minute, too.
 */
final class EditionListener implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(EditionListener.class);
  static final int UNKNOWN = Integer.MAX_VALUE;

  private static final int LOOK_AGAIN_MILLISECONDS = 30_000;
  private static final int RECONNECT_MILLISECONDS = 1_000;
  private static final int END_MILLISECONDS = 2_000;

  private final DatabaseAddress address;
  private final IntConsumer look;
  private final CountDownLatch closed = new CountDownLatch(1);
  private final Thread thread = new Thread(this::run, "new-editions");
  private volatile @Nullable Connection connection;

  private EditionListener(DatabaseAddress address, IntConsumer look) {
    this.address = address;
    this.look = look;
  }

  /**
   * @param look told the number of every new edition, and {@link #UNKNOWN} whenever there may be
   *     one that wasn't announced; by one thread
   */
  static EditionListener start(DatabaseAddress address, IntConsumer look) {
    EditionListener listener = new EditionListener(address, look);
    listener.thread.setDaemon(true);
    listener.thread.start();
    return listener;
  }

  private void run() {
    boolean told = false;
    while (!isClosed(0)) {
      try (Connection opened = ConnectionProbe.connect(address)) {
        connection = opened;
        told = false;
        listen(opened);
      } catch (SQLException problem) {
        if (isClosed(RECONNECT_MILLISECONDS)) {
          return;
        }
        if (!told) { // not every second
          LOG.warn("New editions can't be listened for: {}", problem.getMessage());
        }
        told = true;
      }
    }
  }

  private void listen(Connection opened) throws SQLException {
    try (Statement statement = opened.createStatement()) {
      statement.execute("listen " + EditionWriter.CHANNEL);
    }
    PGConnection notified = opened.unwrap(PGConnection.class);
    int announced = UNKNOWN;
    while (!isClosed(0)) {
      lookSafely(announced);
      announced = newest(notified.getNotifications(LOOK_AGAIN_MILLISECONDS));
    }
  }

  /** Of some announcements, or unknown where there are none. */
  private static int newest(PGNotification[] announcements) {
    return Arrays.stream(announcements)
        .map(PGNotification::getParameter)
        .mapToInt(number -> number.matches("[0-9]{1,9}") ? Integer.parseInt(number) : UNKNOWN)
        .max()
        .orElse(UNKNOWN);
  }

  private void lookSafely(int announced) {
    try {
      look.accept(announced);
    } catch (UnavailableException later) {
      LOG.warn("A new edition can't be read yet: {}", later.getMessage());
    } catch (RuntimeException problem) {
      LOG.warn("A new edition can't be read yet", problem);
    }
  }

  private boolean isClosed(int milliseconds) {
    try {
      return closed.await(milliseconds, TimeUnit.MILLISECONDS);
    } catch (InterruptedException interruption) {
      Thread.currentThread().interrupt();
      return true;
    }
  }

  /** Ends the thread, which may be waiting for the database. */
  @Override
  public void close() {
    closed.countDown();
    try {
      Connection open = connection;
      if (open != null) {
        open.abort(Runnable::run);
      }
      thread.join(END_MILLISECONDS);
    } catch (SQLException problem) {
      LOG.debug("The connection for new editions was gone already", problem);
    } catch (InterruptedException interruption) {
      Thread.currentThread().interrupt();
    }
  }
}
