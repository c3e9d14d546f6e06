package org.hedgerow.web;

/** Some routes that belong together. */
@FunctionalInterface
public interface RouteGroup {
  void addTo(Routes routes);

  /** Works out what takes long at first, before anybody asks for it. */
  default void prepare() {}
}
