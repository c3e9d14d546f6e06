package org.hedgerow.web.problems;

import io.javalin.http.Context;
import io.javalin.http.Header;

/** Says when to come again, where nobody knew better. */
public final class RetryAfter {
  /** In seconds. */
  public static final String SOON = "5";

  private static final String LATER = "60";

  private RetryAfter() {}

  static void addTo(Context context, Problem problem) {
    if (context.res().getHeader(Header.RETRY_AFTER) == null) {
      switch (problem.status()) {
        case 503 -> context.header(Header.RETRY_AFTER, SOON);
        case 507 -> context.header(Header.RETRY_AFTER, LATER);
        default -> {}
      }
    }
  }
}
