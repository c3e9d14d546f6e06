package org.hedgerow.review;

import java.util.List;
import org.hedgerow.accounts.Actor;

/** Looks once more at what was returned or declined. */
public final class Reopen {
  private final Workroom room;
  private final Deciding deciding;

  Reopen(Workroom room) {
    this.room = room;
    this.deciding = new Deciding(room);
  }

  /**
   * @throws ConflictException if its author has changed it since
   */
  public Contribution execute(Actor actor, int id, int revision, String comment) {
    return deciding.decide(
        actor,
        id,
        revision,
        DecisionKind.REOPEN,
        comment,
        (page, present) -> {
          requireUnchanged(page, present);
          return Deciding.Outcome.of(present.in(State.SUBMITTED, room.now()));
        });
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
