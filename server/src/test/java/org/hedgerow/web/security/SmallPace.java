package org.hedgerow.web.security;

import java.time.InstantSource;

/** Quotas that a test uses up quickly. */
public final class SmallPace {
  private SmallPace() {}

  /** For visitors from this machine, by the system's clock. */
  public static Pace of(int quota) {
    return of(quota, new Clients(false), InstantSource.system());
  }

  static Pace of(int quota, Clients clients, InstantSource clock) {
    return new Pace("tests", "tests", quota, clients, clock);
  }
}
