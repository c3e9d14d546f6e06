package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes those wait who fail to sign in, ever longer, to a limit. Whoever is on a device that the
 * account has been used on waits for nothing but their own failures there. All others wait for
 * those of their network at that account; and, once there were many, a short while for those of
 * their network at all accounts and of all networks at that account. To those two each network and
 * account adds but a few, so that one guesser can't keep everybody waiting. An attempt counts as
 * failed from its beginning: many at the same time are no way around it.
 */
final class Throttle {
  private static final int FREE = 5;

  /** A whole school may come from one address. */
  private static final int FREE_FOR_NETWORK = 60;

  private static final int FREE_FOR_ACCOUNT = 50;

  private static final Duration MAX_WAIT = Duration.ofMinutes(15);
  private static final Duration MAX_SHARED_WAIT = Duration.ofMinutes(1);
  private static final int LARGEST_POWER = 10;
  private static final Duration FORGOTTEN_AFTER = Duration.ofDays(1);

  /** Some ten megabytes; whoever invents names or networks gets no further. */
  private static final int MAX_KEPT = 100_000;

  /**
   * What is counted.
   *
   * @param subject its name in the table
   * @param free how many failures nobody waits for
   */
  private record Counter(String subject, int free, Duration longest) {
    static Counter own(String subject) {
      return new Counter(subject, FREE, MAX_WAIT);
    }
  }

  private final FailedSignInStore failures;
  private final List<Counter> shared;
  private final Counter own;
  private final Instant now;

  private Throttle(FailedSignInStore failures, List<Counter> shared, Counter own, Instant now) {
    this.failures = failures;
    this.shared = List.copyOf(shared);
    this.own = own;
    this.now = now;
  }

  /** Of whoever is on a device that isn't known for the account. */
  static Throttle ofStranger(FailedSignInStore failures, String name, String network, Instant now) {
    return new Throttle(
        failures,
        List.of(
            new Counter("network " + network, FREE_FOR_NETWORK, MAX_SHARED_WAIT),
            new Counter(account(name), FREE_FOR_ACCOUNT, MAX_SHARED_WAIT)),
        Counter.own(pairs(name) + network),
        now);
  }

  /** Of whoever is on a device that is known for the account. */
  static Throttle ofDevice(FailedSignInStore failures, String name, String device, Instant now) {
    return new Throttle(
        failures, List.of(), Counter.own("device %s %s".formatted(name, device)), now);
  }

  /** Of whoever is signed in and asked for the password once more. */
  static Throttle ofPassword(FailedSignInStore failures, String name, Instant now) {
    return new Throttle(failures, List.of(), Counter.own("password " + name), now);
  }

  private static String account(String name) {
    return "account " + name;
  }

  private static String pairs(String name) {
    return "pair " + name + " ";
  }

  /** The account has a new password: nobody need wait for what was tried before. */
  static void forgive(FailedSignInStore failures, String name) {
    failures.remove(account(name));
    failures.removeStartingWith(pairs(name));
  }

  /**
   * Counts an attempt, unless it comes too early.
   *
   * @return how long to wait if it does
   */
  Optional<Duration> enter() {
    List<FailedSignIns> remembered = new ArrayList<>();
    for (Counter each : shared) {
      FailedSignIns found = remembered(each.subject());
      Duration remaining = remaining(found, each);
      if (!remaining.isZero()) {
        return Optional.of(remaining);
      }
      remembered.add(found);
    }
    FailedSignIns mine = remembered(own.subject());
    Duration remaining = remaining(mine, own);
    if (!remaining.isZero()) {
      return Optional.of(remaining);
    }
    int added = mine.count() < FREE ? 1 : 0;
    for (int i = 0; i < shared.size(); i++) {
      add(remembered.get(i), shared.get(i).free(), added);
    }
    save(mine, mine.count() + 1);
    return Optional.empty();
  }

  /**
   * Until somebody must wait, the time stays that of the first failure, so that few failures a day
   * never add up over days; from then on it is that of the last attempt.
   */
  private void add(FailedSignIns found, int free, int added) {
    boolean moves = found.count() == 0 || found.count() >= free;
    failures.save(
        new FailedSignIns(found.subject(), found.count() + added, moves ? now : found.last()));
  }

  /** The attempt succeeded after all, which makes up for those before it. */
  void succeed() {
    List<FailedSignIns> remembered =
        shared.stream().map(each -> remembered(each.subject())).toList();
    FailedSignIns mine = remembered(own.subject());
    int added = Math.min(mine.count(), FREE);
    for (FailedSignIns each : remembered) {
      failures.save(
          new FailedSignIns(each.subject(), Math.max(0, each.count() - added), each.last()));
    }
    save(mine, 0);
  }

  /** Forgets what is long ago, and what is too much. */
  static void tidy(FailedSignInStore failures, Instant now) {
    failures.removeBefore(now.minus(FORGOTTEN_AFTER));
    failures.keepNewest(MAX_KEPT);
  }

  private FailedSignIns remembered(String subject) {
    FailedSignIns found = failures.lock(subject, now);
    return found.last().isBefore(now.minus(FORGOTTEN_AFTER))
        ? new FailedSignIns(subject, 0, now)
        : found;
  }

  private void save(FailedSignIns old, int count) {
    failures.save(new FailedSignIns(old.subject(), count, now));
  }

  private Duration remaining(FailedSignIns found, Counter counter) {
    if (found.count() < counter.free()) {
      return Duration.ZERO;
    }
    Duration wait = wait(found.count() - counter.free(), counter.longest());
    Duration remaining = Duration.between(now, found.last().plus(wait));
    return remaining.isNegative() ? Duration.ZERO : remaining;
  }

  /** 1, 2, 4, 8 seconds and so on. */
  private static Duration wait(int beyond, Duration longest) {
    Duration wait = Duration.ofSeconds(1L << Math.min(beyond, LARGEST_POWER));
    return wait.compareTo(longest) > 0 ? longest : wait;
  }
}
