package org.hedgerow.app;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.CountDownLatch;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What a command has opened and must close again, the latest first: when the command is done, or
 * when the process is told to end before that.
 */
final class ShutdownResources implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(ShutdownResources.class);

  private final Deque<AutoCloseable> open = new ArrayDeque<>();
  private boolean ending;

  private ShutdownResources() {}

  static ShutdownResources create() {
    ShutdownResources resources = new ShutdownResources();
    Runtime.getRuntime().addShutdownHook(new Thread(resources::closeBecauseOfEnd, "close-at-exit"));
    return resources;
  }

  synchronized <T extends AutoCloseable> T add(T resource) {
    open.push(resource);
    if (ending) {
      closeAll();
    }
    return resource;
  }

  @Override
  public void close() {
    if (!closedInTime()) {
      awaitEnd();
    }
  }

  private synchronized boolean closedInTime() {
    if (!ending) {
      closeAll();
    }
    return !ending;
  }

  private synchronized void closeBecauseOfEnd() {
    ending = true;
    closeAll();
  }

  /** What goes wrong in a command because its resources are gone is nobody's concern. */
  private static void awaitEnd() {
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException interruption) {
      Thread.currentThread().interrupt();
    }
  }

  private void closeAll() {
    while (!open.isEmpty()) {
      AutoCloseable resource = open.pop();
      try {
        resource.close();
      } catch (Exception problem) {
        LOG.warn("Could not close {}", resource.getClass().getSimpleName(), problem);
      }
    }
  }
}
