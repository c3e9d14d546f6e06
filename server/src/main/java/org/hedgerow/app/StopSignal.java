package org.hedgerow.app;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.jline.utils.Signals;
import org.jspecify.annotations.Nullable;

/**
 * Waits for Ctrl-C or SIGTERM, which are the ordinary end of a server, or for a failure after which
 * it can't go on.
 */
final class StopSignal {
  private static final List<String> NAMES = List.of("INT", "TERM");

  private final CountDownLatch given = new CountDownLatch(1);

  private volatile @Nullable String failure;

  private StopSignal() {}

  static StopSignal listen() {
    StopSignal signal = new StopSignal();
    NAMES.forEach(name -> Signals.register(name, signal::give));
    return signal;
  }

  /** Ends the wait with a failure; an ordinary end before it stays one. */
  void fail(String message) {
    failure = message;
    given.countDown();
  }

  /**
   * Also returns if the thread is interrupted.
   *
   * @throws CommandFailedException with the message of a failure
   */
  void await() {
    try {
      given.await();
      if (failure != null) {
        throw new CommandFailedException(failure);
      }
    } catch (InterruptedException interruption) {
      Thread.currentThread().interrupt();
    }
  }

  /** A second signal ends a process that takes too long to stop. */
  private void give() {
    NAMES.forEach(Signals::registerDefault);
    given.countDown();
  }
}
