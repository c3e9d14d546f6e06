package org.hedgerow.web.security;

import java.time.InstantSource;

/**
 * The quotas of what costs a server much: far above what hands do, far below what hurts others.
 *
 * @param uploads of pictures, each of which is decoded and encoded again
 * @param submissions of contributions and of tables of them
 * @param orders of sentences, each of which takes a processor up to two seconds
 */
public record RateLimits(RateLimit uploads, RateLimit submissions, RateLimit orders) {
  static final int UPLOADS = 60;
  static final int SUBMISSIONS = 120;

  /** A class of trainees may come from one address. */
  static final int ORDERS = 60;

  public static RateLimits by(Clients clients, InstantSource clock) {
    return new RateLimits(
        new RateLimit("pictures", "pictures", UPLOADS, clients, clock),
        new RateLimit("submissions", "submissions", SUBMISSIONS, clients, clock),
        new RateLimit("sentences", "orders of sentences", ORDERS, clients, clock));
  }
}
