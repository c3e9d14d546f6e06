package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Makes those wait who fail to sign in, by account and by network address; ever longer, to a limit,
 * so that nobody can lock others out for good. An attempt counts as failed from its beginning: many
 * at the same time are no way around it.
 */
final class Throttle {
  private static final int FREE_FOR_ACCOUNT = 5;

  /** A whole school may come from one address. */
  private static final int FREE_FOR_ADDRESS = 30;

  private static final Duration LONGEST_WAIT = Duration.ofMinutes(15);
  private static final int LARGEST_POWER = 10;
  private static final Duration FORGOTTEN_AFTER = Duration.ofDays(1);

  private final FailureStore failures;
  private final String account;
  private final String address;
  private final Instant now;

  Throttle(FailureStore failures, String name, String address, Instant now) {
    this.failures = failures;
    this.account = "account " + name;
    this.address = "address " + address;
    this.now = now;
  }

  /**
   * Counts an attempt, unless it comes too early.
   *
   * @return how long to wait if it does
   */
  Optional<Duration> enter() {
    Failures ofAccount = remembered(account);
    Failures ofAddress = remembered(address);
    Duration left = longer(left(ofAccount, FREE_FOR_ACCOUNT), left(ofAddress, FREE_FOR_ADDRESS));
    if (left.isZero()) {
      save(ofAccount, ofAccount.count() + 1);
      save(ofAddress, ofAddress.count() + 1);
      return Optional.empty();
    }
    return Optional.of(left);
  }

  /** The attempt succeeded after all. */
  void succeed() {
    save(remembered(account), 0);
    Failures ofAddress = remembered(address);
    save(ofAddress, Math.max(0, ofAddress.count() - 1));
  }

  /** Forgets what is long ago. */
  static void tidy(FailureStore failures, Instant now) {
    failures.removeBefore(now.minus(FORGOTTEN_AFTER));
  }

  private Failures remembered(String subject) {
    Failures found = failures.lock(subject, now);
    return found.last().isBefore(now.minus(FORGOTTEN_AFTER))
        ? new Failures(subject, 0, now)
        : found;
  }

  private void save(Failures old, int count) {
    failures.save(new Failures(old.subject(), count, now));
  }

  private Duration left(Failures found, int free) {
    if (found.count() < free) {
      return Duration.ZERO;
    }
    Duration left = Duration.between(now, found.last().plus(wait(found.count() - free)));
    return left.isNegative() ? Duration.ZERO : left;
  }

  /** 1, 2, 4, 8 seconds and so on. */
  private static Duration wait(int beyond) {
    Duration wait = Duration.ofSeconds(1L << Math.min(beyond, LARGEST_POWER));
    return wait.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : wait;
  }

  private static Duration longer(Duration one, Duration other) {
    return one.compareTo(other) >= 0 ? one : other;
  }
}
