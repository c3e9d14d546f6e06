package org.hedgerow.web;

import java.util.List;

/** Some routes that belong together. */
@FunctionalInterface
public interface RouteGroup {
  void addTo(Routes routes);

  /** What takes long when it is first asked for, to be gone through before anybody asks. */
  default List<Runnable> rehearsals() {
    return List.of();
  }
}
