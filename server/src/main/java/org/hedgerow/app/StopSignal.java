package org.hedgerow.app;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.jline.utils.Signals;

/** Waits for Ctrl-C or SIGTERM, which are the ordinary end of a server and no failure. */
final class StopSignal {
  private static final List<String> NAMES = List.of("INT", "TERM");

  private final CountDownLatch given = new CountDownLatch(1);

  private StopSignal() {}

  static StopSignal listen() {
    StopSignal signal = new StopSignal();
    NAMES.forEach(name -> Signals.register(name, signal::give));
    return signal;
  }

  /** Also returns if the thread is interrupted. */
  void await() {
    try {
      given.await();
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
