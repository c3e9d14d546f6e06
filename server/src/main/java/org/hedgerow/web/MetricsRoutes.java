package org.hedgerow.web;

import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;

/** Measurements in the text format of Prometheus. */
public final class MetricsRoutes implements RouteGroup {
  private static final String MEDIA_TYPE = "text/plain; version=0.0.4; charset=utf-8";

  private final PrometheusMeterRegistry registry;

  public MetricsRoutes(PrometheusMeterRegistry registry) {
    this.registry = registry;
  }

  @Override
  public void addTo(Routes routes) {
    routes.get(
        "/metrics", context -> context.contentType(MEDIA_TYPE).result(registry.scrape(MEDIA_TYPE)));
  }
}
