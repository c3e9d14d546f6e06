package org.hedgerow.web.security;

import io.javalin.http.Context;
import java.net.URI;
import java.util.Set;

/** What browsers say about the page that a request comes from. */
final class SameOrigin {
  /** The values of Fetch Metadata for our own pages, and for what people do themselves. */
  private static final Set<String> OURS = Set.of("same-origin", "none");

  private SameOrigin() {}

  /** Whether nothing speaks against it. */
  static boolean mayBe(Context context) {
    String site = context.header("Sec-Fetch-Site");
    if (site != null) {
      return OURS.contains(site);
    }
    String origin = context.header("Origin");
    return origin == null || isHost(origin, String.valueOf(context.host()));
  }

  private static boolean isHost(String origin, String host) {
    try {
      return host.equalsIgnoreCase(URI.create(origin).getAuthority());
    } catch (IllegalArgumentException nonsense) {
      return false;
    }
  }
}
