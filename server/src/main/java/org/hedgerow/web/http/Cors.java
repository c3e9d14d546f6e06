package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import org.hedgerow.web.Routes;

/**
 * Lets pages of other sites ask what anybody may read (the Fetch standard, "CORS protocol").
 * Nothing here looks at cookies, so no origin gets more than any visitor.
 */
public final class Cors {

  private static final String DAY_IN_SECONDS = "86400";

  private static final String EXPOSED =
      "ETag, Link, %s, %s".formatted(Sending.EDITION, Sending.TOTAL);

  private Cors() {}

  /** Opens all answers below a path, problems too. */
  public static void open(Routes routes, String base) {
    routes.before(base + "/*", Cors::allow);
  }

  /** Answers the browser that asks for leave before it uses a method. */
  public static void allow(Routes routes, String path, String method) {
    routes.options(path, preflight(method));
  }

  private static void allow(Context context) {
    context
        .header(Header.ACCESS_CONTROL_ALLOW_ORIGIN, "*")
        .header(Header.ACCESS_CONTROL_EXPOSE_HEADERS, EXPOSED);
  }

  private static Handler preflight(String method) {
    return context ->
        context
            .status(204)
            .header(Header.ACCESS_CONTROL_ALLOW_METHODS, method)
            .header(Header.ACCESS_CONTROL_ALLOW_HEADERS, "Content-Type, If-None-Match")
            .header(Header.ACCESS_CONTROL_MAX_AGE, DAY_IN_SECONDS);
  }
}
