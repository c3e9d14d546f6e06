package org.hedgerow.web.security;

import java.time.InstantSource;

/**
 * The quotas of what costs a server much: far above what hands do, far below what hurts others.
 *
 * @param uploads of pictures, each of which is decoded and encoded again
 * @param submissions of contributions and of tables of them
 * @param orders of sentences, each of which takes a processor up to two seconds
 */
public record Paces(Pace uploads, Pace submissions, Pace orders) {
  static final int UPLOADS = 60;
  static final int SUBMISSIONS = 120;

  /** A class of trainees may come from one address. */
  static final int ORDERS = 60;

  public static Paces by(Clients clients, InstantSource clock) {
    return new Paces(
        new Pace("pictures", "pictures", UPLOADS, clients, clock),
        new Pace("submissions", "submissions", SUBMISSIONS, clients, clock),
        new Pace("sentences", "orders of sentences", ORDERS, clients, clock));
  }
}
