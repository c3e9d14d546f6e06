package org.hedgerow.web.security;

import com.github.benmanes.caffeine.cache.Cache;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.InstantSource;
import org.hedgerow.caching.Caches;

/**
 * A quota of costly requests for each client: so many at once, and as many again in every minute
 * (token bucket). Every answer tells the client what is left of it. Each server counts for itself.
 * Thread-safe.
 */
public final class RateLimit {
  private static final Duration WINDOW = Duration.ofMinutes(1);
  private static final int MAX_CLIENTS = 10_000;

  private final String name;
  private final String what;
  private final int quota;
  private final Clients clients;
  private final TimeMeter time;

  /** A bucket that wasn't used for a window is full, and needn't be kept. */
  private final Cache<String, Bucket> buckets =
      Caches.builder().maximumSize(MAX_CLIENTS).expireAfterAccess(WINDOW).build();

  /**
   * @param name of the policy in headers
   * @param what is counted, as in {@code pictures}
   * @param quota requests in a minute
   */
  public RateLimit(String name, String what, int quota, Clients clients, InstantSource clock) {
    this.name = name;
    this.what = what;
    this.quota = quota;
    this.clients = clients;
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
   * Counts one request of the client.
   *
   * @throws TooFastException if it is one too many; then the answer says when to come again
   */
  public void count(Context context) {
    ConsumptionProbe probe = bucket(context).tryConsumeAndReturnRemaining(1);
    if (!probe.isConsumed()) {
      Duration wait = Duration.ofNanos(probe.getNanosToWaitForRefill());
      limit().refuse(context, wait);
      throw new TooFastException(what, wait);
    }
    limit().tell(context, probe.getRemainingTokens(), untilFull(probe.getRemainingTokens()));
  }

  /** Tells the client what is left, for a request that costs nothing. */
  public void show(Context context) {
    long remaining = bucket(context).getAvailableTokens();
    limit().tell(context, remaining, untilFull(remaining));
  }

  private RateLimitHeaders limit() {
    return new RateLimitHeaders(name, quota, WINDOW);
  }

  private Duration untilFull(long remaining) {
    return WINDOW.multipliedBy(quota - remaining).dividedBy(quota);
  }

  private Bucket bucket(Context context) {
    String client = clients.key(context);
    Bucket known = buckets.getIfPresent(client);
    if (known != null) {
      return known;
    }
    Bucket full = full();
    Bucket earlier = buckets.asMap().putIfAbsent(client, full);
    return earlier == null ? full : earlier;
  }

  private Bucket full() {
    return Bucket.builder()
        .addLimit(limit -> limit.capacity(quota).refillGreedy(quota, WINDOW))
        .withCustomTimePrecision(time)
        .build();
  }
}
