package org.hedgerow.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.List;
import org.hedgerow.operations.Role;

/** Where routes are entered, each with the role that it takes: visitors' where none is said. */
public final class Routes {

  /** Where the addresses of the interface for programs begin. */
  public static final String API = "/api/v1";

  private final RoutesConfig config;
  private final Guard guard;
  private final List<Route> table = new ArrayList<>();

  Routes(RoutesConfig config, Guard guard) {
    this.config = config;
    this.guard = guard;
  }

  public void get(String path, Handler handler) {
    get(path, Role.VISITOR, handler);
  }

  /** HEAD runs the same handler: left to itself, Javalin answers it 200 without looking. */
  public void get(String path, Role role, Handler handler) {
    add(HandlerType.GET, Route.of("GET", path, role), handler);
    add(HandlerType.HEAD, Route.of("HEAD", path, role), handler);
  }

  public void post(String path, Handler handler) {
    post(path, Role.VISITOR, handler);
  }

  public void post(String path, Role role, Handler handler) {
    add(HandlerType.POST, Route.of("POST", path, role), handler);
  }

  public void put(String path, Role role, Handler handler) {
    add(HandlerType.PUT, Route.of("PUT", path, role), handler);
  }

  public void patch(String path, Role role, Handler handler) {
    add(HandlerType.PATCH, Route.of("PATCH", path, role), handler);
  }

  public void delete(String path, Role role, Handler handler) {
    add(HandlerType.DELETE, Route.of("DELETE", path, role), handler);
  }

  /** Where the form of a page is sent. */
  public void form(String path, Role role, Handler handler) {
    add(HandlerType.POST, new Route("POST", path, role, true), handler);
  }

  public void options(String path, Handler handler) {
    add(HandlerType.OPTIONS, Route.of("OPTIONS", path, Role.VISITOR), handler);
  }

  private void add(HandlerType method, Route route, Handler handler) {
    table.add(route);
    config.addHttpHandler(method, route.path(), guard.guard(route, handler));
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

  /** All that were entered so far. */
  List<Route> table() {
    return List.copyOf(table);
  }
}
