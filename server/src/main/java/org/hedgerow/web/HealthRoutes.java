package org.hedgerow.web;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Map;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;

/** For whatever watches over the server: live means that it runs, ready that it can answer. */
public final class HealthRoutes implements RouteGroup {
  private final Readiness readiness;

  public HealthRoutes(Readiness readiness) {
    this.readiness = readiness;
  }

  @Override
  public void addTo(Routes routes) {
    routes.get("/health/live", HealthRoutes::answer);
    routes.get("/health/ready", this::ready);
  }

  private void ready(Context context) {
    if (!readiness.isReady()) {
      throw Problem.of(
              ProblemType.UNAVAILABLE, "The word bank isn't ready yet. Try again in a moment.")
          .exception();
    }
    answer(context);
  }

  private static void answer(Context context) {
    context.header(Header.CACHE_CONTROL, "no-store").json(Map.of("status", "up"));
  }
}
