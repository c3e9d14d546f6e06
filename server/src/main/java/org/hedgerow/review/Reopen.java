package org.hedgerow.review;

import java.util.List;
import org.hedgerow.operations.Actor;

/** Looks once more at what was returned or declined. */
final class Reopen implements DecisionStep {
  private final ReviewContext context;

  Reopen(ReviewContext context) {
    this.context = context;
  }

  /**
   * @throws ConflictException if its author has changed it since
   */
  @Override
  public Outcome take(
      ReviewUnitOfWork unit, Contribution present, Actor actor, DecisionRequest request) {
    requireUnchanged(unit, present);
    return Outcome.of(present.in(ContributionState.SUBMITTED, context.now()));
  }

  /** What its author is still writing must first be submitted. */
  private static void requireUnchanged(ReviewUnitOfWork unit, Contribution present) {
    List<Decision> decisions = unit.decisions().on(present.id());
    if (decisions.get(decisions.size() - 1).revision() != present.revision()) {
      throw new ConflictException(
          "Contribution %d can’t be reopened: its author is changing it".formatted(present.id()),
          present);
    }
  }
}
