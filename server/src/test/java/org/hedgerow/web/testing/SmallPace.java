package org.hedgerow.web.testing;

import java.time.InstantSource;
import org.hedgerow.web.security.Clients;
import org.hedgerow.web.security.RateLimit;

/** Quotas that a test uses up quickly. */
public final class SmallPace {
  private SmallPace() {}

  /** For visitors from this machine, by the system's clock. */
  public static RateLimit of(int quota) {
    return of(quota, new Clients(false), InstantSource.system());
  }

  public static RateLimit of(int quota, Clients clients, InstantSource clock) {
    return new RateLimit("tests", "tests", quota, clients, clock);
  }
}
