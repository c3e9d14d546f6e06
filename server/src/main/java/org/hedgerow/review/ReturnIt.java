package org.hedgerow.review;

import org.hedgerow.accounts.Actor;

/** Asks the author for a change. */
public final class ReturnIt {
  private final Workroom room;
  private final Deciding deciding;

  ReturnIt(Workroom room) {
    this.room = room;
    this.deciding = new Deciding(room);
  }

  /**
   * @param comment what is to be changed
   */
  public Contribution execute(Actor actor, int id, int revision, String comment) {
    return deciding.decide(
        actor,
        id,
        revision,
        DecisionKind.RETURN,
        comment,
        (page, present) -> Deciding.Outcome.of(present.in(State.RETURNED, room.now())));
  }
}
