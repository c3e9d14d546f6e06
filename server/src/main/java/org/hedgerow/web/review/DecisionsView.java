package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemBody;

/** What came of many decisions, in the order in which they were sent. */
record DecisionsView(List<Result> results) {

  /**
   * What came of one: the contribution as it is from now on, or why nothing was done.
   *
   * @param outcome {@code decided} or {@code refused}
   * @param contribution its number
   */
  record Result(
      String outcome,
      int contribution,
      Optional<ContributionView> decided,
      Optional<ProblemBody> problem) {
    static Result of(ContributionView view) {
      return new Result("decided", view.id(), Optional.of(view), Optional.empty());
    }

    static Result refused(int contribution, Problem problem) {
      return new Result(
          "refused", contribution, Optional.empty(), Optional.of(ProblemBody.of(problem)));
    }
  }
}
