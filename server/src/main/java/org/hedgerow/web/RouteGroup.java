package org.hedgerow.web;

/** Some routes that belong together. */
@FunctionalInterface
public interface RouteGroup {
  void addTo(Routes routes);
}
