package org.hedgerow.web;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Map;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/**
 * For whatever watches over the server. Live: it runs, and no change has been stuck for long.
 * Ready: it answers reads, which needs no database. Writes: changes can be stored too.
 */
public final class HealthRoutes implements RouteGroup {
  private static final Map<String, String> UP = Map.of("status", "up");

  private final Health health;

  /**
   * @param status for reads
   */
  private record Ready(String status, String writes) {}

  public HealthRoutes(Health health) {
    this.health = health;
  }

  @Override
  public void addTo(Routes routes) {
    routes.get("/health/live", this::live);
    routes.get("/health/ready", this::ready);
    routes.get("/health/writes", this::writes);
  }

  private void live(Context context) {
    if (health.isStuck()) {
      throw refused(
          "A change to the bank has been going on for more than half a minute and won't end. Restart the server.");
    }
    answer(context, UP);
  }

  private void ready(Context context) {
    answer(context, new Ready("up", health.takesWrites() ? "up" : "down"));
  }

  private void writes(Context context) {
    if (!health.takesWrites()) {
      throw refused(
          "Nothing can be stored just now: the database is away, or its disk is full. Reading goes on.");
    }
    answer(context, UP);
  }

  private static ProblemException refused(String detail) {
    return Problem.of(ProblemType.UNAVAILABLE, detail).exception();
  }

  private static void answer(Context context, Object state) {
    context.header(Header.CACHE_CONTROL, "no-store").json(state);
  }
}
