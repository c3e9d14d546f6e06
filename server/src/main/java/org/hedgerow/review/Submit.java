package org.hedgerow.review;

import java.util.Map;
import org.hedgerow.accounts.Actor;
import org.hedgerow.accounts.RejectedException;
import org.hedgerow.accounts.Role;

/** Sends a draft, or what was returned, to the reviewers, with what the machine finds. */
public final class Submit {
  private final ReviewContext room;

  Submit(ReviewContext room) {
    this.room = room;
  }

  /**
   * @throws RejectedException with all that is missing or wrong
   * @throws StaleRevisionException if it has been changed since
   * @throws ConflictException if it was submitted already
   */
  public Contribution execute(Actor actor, int id, int revision) {
    actor.require(Role.CONTRIBUTOR);
    return room.inTransaction(unit -> submit(unit, actor, Own.lock(unit, actor, id, revision)));
  }

  private Contribution submit(ReviewUnitOfWork unit, Actor actor, Contribution present) {
    if (!present.state().isOpen()) {
      throw ConflictException.of("submitted", present);
    }
    BankSnapshot basis = room.basis(unit);
    RejectedException.throwIfAny(present.content().errors(basis));
    return submit(
        unit, actor, present, new Examiner(basis.lexicon()).examine(present.content(), basis));
  }

  /** The record keeps what it says, since its author may change that later. */
  Contribution submit(
      ReviewUnitOfWork unit, Actor actor, Contribution present, Examination examination) {
    Contribution submitted = present.submitted(examination, room.now());
    unit.contributions().save(submitted);
    room.record(
        unit,
        actor,
        "submitted",
        submitted,
        Map.of("state", present.state().label()),
        Map.of(
            "state",
            submitted.state().label(),
            "revision",
            submitted.revision(),
            "content",
            submitted.content()));
    return submitted;
  }
}
