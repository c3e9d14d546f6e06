package org.hedgerow.web;

import io.javalin.http.Context;
import io.javalin.http.RequestLogger;
import io.javalin.router.Endpoint;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Duration;
import java.util.Set;

/** Measures how long requests take, by method, route and status. */
final class RequestTimes implements RequestLogger {
  private static final Set<String> METHODS =
      Set.of("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS");
  private static final double NANOSECONDS_IN_MILLISECOND = 1e6;

  private final MeterRegistry registry;

  RequestTimes(MeterRegistry registry) {
    this.registry = registry;
  }

  @Override
  public void handle(Context context, Float milliseconds) {
    Timer.builder("http.server.requests")
        .description("Requests answered, by method, route and status")
        .tag("method", method(context))
        .tag("route", route(context))
        .tag("status", Integer.toString(context.statusCode()))
        .register(registry)
        .record(Duration.ofNanos((long) (milliseconds * NANOSECONDS_IN_MILLISECOND)));
  }

  /** A client can invent methods; they mustn't each become a series of measurements. */
  private static String method(Context context) {
    String method = context.method().name();
    return METHODS.contains(method) ? method : "other";
  }

  private static String route(Context context) {
    Endpoint endpoint = context.endpoints().lastHttpEndpoint();
    return endpoint == null ? "none" : endpoint.path;
  }
}
