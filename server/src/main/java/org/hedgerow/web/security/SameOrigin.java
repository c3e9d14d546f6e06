package org.hedgerow.web.security;

import io.javalin.http.Context;
import java.util.Set;

/** What browsers say about the page that a request comes from. */
final class SameOrigin {
  /** The values of Fetch Metadata for our own pages, and for what people do themselves. */
  private static final Set<String> OURS = Set.of("same-origin", "none");

  private SameOrigin() {}

  /** Whether nothing speaks against it. */
  static boolean mayBe(Context context, PublicAddress address) {
    String site = context.header("Sec-Fetch-Site");
    if (site != null) {
      return OURS.contains(site);
    }
    String origin = context.header("Origin");
    return origin == null || address.isOurs(origin, context);
  }
}
