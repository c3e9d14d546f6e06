package org.hedgerow.review;

import java.util.List;
import org.hedgerow.accounts.Actor;

/** Looks once more at what was returned or declined. */
final class Reopen implements DecisionStep {
  private final Workroom room;

  Reopen(Workroom room) {
    this.room = room;
  }

  /**
   * @throws ConflictException if its author has changed it since
   */
  @Override
  public Outcome take(ReviewPage page, Contribution present, Actor actor, DecisionRequest request) {
    requireUnchanged(page, present);
    return Outcome.of(present.in(State.SUBMITTED, room.now()));
  }

  /** What its author is still writing must first be submitted. */
  private static void requireUnchanged(ReviewPage page, Contribution present) {
    List<Decision> decisions = page.decisions().on(present.id());
    if (decisions.get(decisions.size() - 1).revision() != present.revision()) {
      throw new ConflictException(
          "Contribution %d can’t be reopened: its author is changing it".formatted(present.id()),
          present);
    }
  }
}
