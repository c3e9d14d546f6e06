package org.hedgerow.web.security;

import java.time.InstantSource;

/**
 * The paces of those who contribute: far above what hands do, far below what hurts others.
 *
 * @param uploads of pictures, each of which is decoded and encoded again
 * @param submissions of contributions and of tables of them
 */
public record Paces(Pace uploads, Pace submissions) {
  static final int UPLOADS = 60;
  static final int SUBMISSIONS = 120;

  public static Paces by(InstantSource clock) {
    return new Paces(
        new Pace("pictures", UPLOADS, clock), new Pace("submissions", SUBMISSIONS, clock));
  }
}
