package org.hedgerow.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;

/** Where routes are entered. */
public final class Routes {
  private final RoutesConfig config;

  Routes(RoutesConfig config) {
    this.config = config;
  }

  /** HEAD runs the same handler: left to itself, Javalin answers it 200 without looking. */
  public void get(String path, Handler handler) {
    config.get(path, handler);
    config.head(path, handler);
  }

  public void post(String path, Handler handler) {
    config.post(path, handler);
  }

  public void options(String path, Handler handler) {
    config.options(path, handler);
  }

  /** Runs before every request to such a path, whether there is a route for it or not. */
  public void before(String path, Handler handler) {
    config.before(path, handler);
  }

  /** Runs before every request, whether there is a route for it or not. */
  public void before(Handler handler) {
    config.before(handler);
  }

  /** Runs after every request, whether there is a route for it or not. */
  public void after(Handler handler) {
    config.after(handler);
  }
}
