package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** A clock that goes on when it is told to. */
public final class SettableClock implements InstantSource {
  private Instant now = Instant.parse("2026-03-02T08:00:00Z");

  @Override
  public synchronized Instant instant() {
    return now;
  }

  public synchronized void goOn(Duration time) {
    now = now.plus(time);
  }
}
