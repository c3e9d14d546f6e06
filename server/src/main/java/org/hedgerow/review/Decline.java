package org.hedgerow.review;

import org.hedgerow.accounts.Actor;

/** Says that a contribution isn't wanted. */
public final class Decline {
  private final Workroom room;
  private final Deciding deciding;

  Decline(Workroom room) {
    this.room = room;
    this.deciding = new Deciding(room);
  }

  /**
   * @param comment why not
   */
  public Contribution execute(Actor actor, int id, int revision, String comment) {
    return deciding.decide(
        actor,
        id,
        revision,
        DecisionKind.DECLINE,
        comment,
        (page, present) -> Deciding.Outcome.of(present.in(State.DECLINED, room.now())));
  }
}
