package org.hedgerow.review;

import org.hedgerow.accounts.Actor;

/** Looks once more at what was returned or declined. */
public final class Reopen {
  private final Workroom room;
  private final Deciding deciding;

  Reopen(Workroom room) {
    this.room = room;
    this.deciding = new Deciding(room);
  }

  public Contribution execute(Actor actor, int id, int revision, String comment) {
    return deciding.decide(
        actor,
        id,
        revision,
        DecisionKind.REOPEN,
        comment,
        (page, present) -> Deciding.Outcome.of(present.in(State.SUBMITTED, room.now())));
  }
}
