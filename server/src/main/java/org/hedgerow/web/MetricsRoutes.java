package org.hedgerow.web;

import io.javalin.http.Context;
import io.javalin.http.Header;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.util.function.Predicate;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;

/** Measurements in the text format of Prometheus. */
public final class MetricsRoutes implements RouteGroup {
  private static final String MEDIA_TYPE = "text/plain; version=0.0.4; charset=utf-8";

  private final PrometheusMeterRegistry registry;
  private final Predicate<Context> access;

  /**
   * @param access who may read them
   */
  public MetricsRoutes(PrometheusMeterRegistry registry, Predicate<Context> access) {
    this.registry = registry;
    this.access = access;
  }

  @Override
  public void addTo(Routes routes) {
    routes.get("/metrics", this::show);
  }

  private void show(Context context) {
    context.header(Header.CACHE_CONTROL, "no-store");
    if (!access.test(context)) {
      throw Problem.of(
              ProblemType.NOT_SIGNED_IN,
              "Measurements are for this server's own machine, and for whoever sends a token of an"
                  + " administrator or the one of --metrics-token-file. Send it as Authorization:"
                  + " Bearer …, or start the server with --metrics open.")
          .exception();
    }
    context.contentType(MEDIA_TYPE).result(registry.scrape(MEDIA_TYPE));
  }
}
