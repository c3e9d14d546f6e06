package org.hedgerow.web.review;

import io.javalin.http.Context;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Quoted;

/** The number of a contribution in an address. */
final class ContributionId {
  private ContributionId() {}

  static int of(Context context) {
    String id = context.pathParam("id");
    if (!id.matches("[1-9][0-9]{0,8}")) {
      throw Problem.of(
              ProblemType.NOT_FOUND,
              "There is no contribution %s: each has a number. GET /api/v1/contributions lists them."
                  .formatted(Quoted.of(id)))
          .exception();
    }
    return Integer.parseInt(id);
  }
}
