package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Devices on which somebody has signed in before, known by a cookie, so that those who guess
 * elsewhere can't keep them waiting (OWASP, “Slow Down Online Guessing Attacks with Device
 * Cookies”). The secret is random and kept as a hash in the database, so all servers know it; every
 * sign-in replaces it, so a copy of it is of no use after that.
 */
final class Devices {
  /** How long a browser keeps the cookie, and a server the device. */
  static final Duration KNOWN_FOR = Duration.ofDays(365);

  private static final int MAX_FOR_ACCOUNT = 20;

  private final Secrets secrets;

  Devices(Secrets secrets) {
    this.secrets = secrets;
  }

  /** The device, if it is known for the account. */
  Optional<String> known(AccountUnitOfWork unit, SignInOrigin visit, int accountId, Instant now) {
    return visit
        .device()
        .map(Secret::hash)
        .filter(hash -> unit.devices().isKnown(hash, accountId, now.minus(KNOWN_FOR)));
  }

  /** Somebody has signed in on it; it gets a new secret. */
  Secret remember(AccountUnitOfWork unit, SignInOrigin visit, int accountId, Instant now) {
    Secret fresh = secrets.fresh();
    visit.device().ifPresent(old -> unit.devices().changeSecret(old.hash(), fresh.hash()));
    unit.devices().remember(fresh.hash(), accountId, now, MAX_FOR_ACCOUNT);
    return fresh;
  }
}
