package org.hedgerow.app.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** Tells the times at which things are said to have happened. */
final class DemoClock implements InstantSource {
  private final Instant now;
  private volatile Instant shown;

  DemoClock(Instant now) {
    this.now = now;
    this.shown = now;
  }

  void goTo(int hoursAgo) {
    shown = now.minus(Duration.ofHours(hoursAgo));
  }

  @Override
  public Instant instant() {
    return shown;
  }
}
