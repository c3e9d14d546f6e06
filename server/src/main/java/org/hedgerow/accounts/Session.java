package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;

/**
 * Somebody is signed in somewhere.
 *
 * @param client what the browser says of itself
 * @param startedAt when they signed in
 * @param seenAt when it was last used, to about a minute
 */
public record Session(int id, int accountId, String client, Instant startedAt, Instant seenAt) {
  /** OWASP ASVS asks for such limits; the figures are ours. */
  public static final Duration MAX_LENGTH = Duration.ofDays(14);

  static final Duration MAX_IDLE = Duration.ofHours(12);

  /** Updates last use at most once a minute, to save writes. */
  static final Duration NOTICEABLE = Duration.ofMinutes(1);

  boolean isOver(Instant now) {
    return !now.isBefore(startedAt.plus(MAX_LENGTH)) || !now.isBefore(seenAt.plus(MAX_IDLE));
  }

  boolean wasSeenAWhileAgo(Instant now) {
    return !now.isBefore(seenAt.plus(NOTICEABLE));
  }
}
