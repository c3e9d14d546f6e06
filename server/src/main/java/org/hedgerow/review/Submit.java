package org.hedgerow.review;

import java.util.Map;
import org.hedgerow.accounts.Actor;
import org.hedgerow.accounts.RefusedException;
import org.hedgerow.accounts.Role;

/** Sends a draft, or what was returned, to the reviewers, with what the machine finds. */
public final class Submit {
  private final Workroom room;

  Submit(Workroom room) {
    this.room = room;
  }

  /**
   * @throws RefusedException with all that is missing or wrong
   * @throws StaleException if it has been changed since
   * @throws ConflictException if it was submitted already
   */
  public Contribution execute(Actor actor, int id, int revision) {
    actor.require(Role.CONTRIBUTOR);
    return room.inTransaction(page -> submit(page, actor, Own.lock(page, actor, id, revision)));
  }

  private Contribution submit(ReviewPage page, Actor actor, Contribution present) {
    if (!present.state().isOpen()) {
      throw ConflictException.of("submitted", present);
    }
    Basis basis = room.basis(page);
    RefusedException.throwIfAny(present.content().faults(basis));
    return submit(
        page, actor, present, new Examiner(basis.lexicon()).examine(present.content(), basis));
  }

  /** The record keeps what it says, since its author may change that later. */
  Contribution submit(ReviewPage page, Actor actor, Contribution present, Examination examination) {
    Contribution submitted = present.submitted(examination, room.now());
    page.contributions().save(submitted);
    room.record(
        page,
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
