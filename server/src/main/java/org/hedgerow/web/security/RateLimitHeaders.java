package org.hedgerow.web.security;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.time.Duration;

/**
 * The headers by which a client learns how many requests it has left
 * (draft-ietf-httpapi-ratelimit-headers-10): {@code RateLimitHeaders-Policy: "pictures";q=60;w=60}
 * and {@code RateLimitHeaders: "pictures";r=59;t=1}.
 *
 * @param policy its name
 * @param quota requests in a window
 */
public record RateLimitHeaders(String policy, long quota, Duration window) {

  /**
   * @param remaining how many requests are left
   * @param reset until the quota is whole again
   */
  void tell(Context context, long remaining, Duration reset) {
    context.header(
        "RateLimit-Policy", "\"%s\";q=%d;w=%d".formatted(policy, quota, window.toSeconds()));
    context.header("RateLimit", "\"%s\";r=%d;t=%d".formatted(policy, remaining, roundedUp(reset)));
  }

  /** Nothing is left; {@code Retry-After} and {@code RateLimitHeaders} name the same moment. */
  public void refuse(Context context, Duration wait) {
    Duration atLeastASecond = Duration.ofSeconds(Math.max(1, roundedUp(wait)));
    context.header(Header.RETRY_AFTER, Long.toString(atLeastASecond.toSeconds()));
    tell(context, 0, atLeastASecond);
  }

  private static long roundedUp(Duration duration) {
    return duration.plusSeconds(1).minusNanos(1).toSeconds();
  }
}
