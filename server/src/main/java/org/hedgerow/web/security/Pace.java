package org.hedgerow.web.security;

import com.github.benmanes.caffeine.cache.Cache;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import io.javalin.http.Context;
import io.javalin.http.Header;
import java.time.Duration;
import java.time.InstantSource;
import org.hedgerow.accounts.Account;
import org.hedgerow.caching.Caches;

/**
 * How fast one account may go on doing what costs a server work: so many at once, and as many again
 * in every minute, as a token bucket counts them. Each server counts for itself. Thread-safe.
 */
public final class Pace {
  private static final Duration MINUTE = Duration.ofMinutes(1);
  private static final int MOST_ACCOUNTS = 10_000;

  private final String what;
  private final int most;
  private final TimeMeter time;
  private final Cache<Integer, Bucket> buckets =
      Caches.builder().maximumSize(MOST_ACCOUNTS).build();

  /**
   * @param what as in {@code pictures}
   * @param most in a minute
   */
  Pace(String what, int most, InstantSource clock) {
    this.what = what;
    this.most = most;
    this.time = new Meter(clock);
  }

  private record Meter(InstantSource clock) implements TimeMeter {
    @Override
    public long currentTimeNanos() {
      return Duration.ofMillis(clock.millis()).toNanos();
    }

    @Override
    public boolean isWallClockBased() {
      return true;
    }
  }

  /**
   * Counts one more of the account that is signed in.
   *
   * @throws TooFastException if it is one too many; then the answer says when to come again
   */
  public void count(Context context) {
    int account = Identity.of(context).actor().account().map(Account::id).orElse(0);
    ConsumptionProbe probe = bucket(account).tryConsumeAndReturnRemaining(1);
    if (!probe.isConsumed()) {
      Duration wait = Duration.ofNanos(probe.getNanosToWaitForRefill());
      context.header(Header.RETRY_AFTER, Long.toString(wait.toSeconds() + 1));
      throw new TooFastException(what, wait);
    }
  }

  private Bucket bucket(int account) {
    Bucket known = buckets.getIfPresent(account);
    if (known != null) {
      return known;
    }
    Bucket full = full();
    Bucket earlier = buckets.asMap().putIfAbsent(account, full);
    return earlier == null ? full : earlier;
  }

  private Bucket full() {
    return Bucket.builder()
        .addLimit(limit -> limit.capacity(most).refillGreedy(most, MINUTE))
        .withCustomTimePrecision(time)
        .build();
  }
}
