package org.hedgerow.web;

import io.javalin.http.Handler;
import org.hedgerow.operations.Role;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;

/** Stands before every route. */
@FunctionalInterface
public interface Guard {
  /** For a server without accounts. */
  Guard VISITORS_ONLY = (route, handler) -> route.role() == Role.VISITOR ? handler : refusal();

  /** The handler of a route, but only for those who may. */
  Handler guard(Route route, Handler handler);

  private static Handler refusal() {
    return context -> {
      throw Problem.of(ProblemType.NOT_SIGNED_IN, "Nobody can sign in here.").exception();
    };
  }
}
