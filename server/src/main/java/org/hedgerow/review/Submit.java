package org.hedgerow.review;

import java.util.Map;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;

/** Sends a draft, or what was returned, to the reviewers, with what the machine finds. */
public final class Submit {
  private final ReviewContext context;

  Submit(ReviewContext context) {
    this.context = context;
  }

  /**
   * @throws RejectedException with all that is missing or wrong
   * @throws StaleRevisionException if it has been changed since
   * @throws ConflictException if it was submitted already
   */
  public Contribution execute(Actor actor, int id, int revision) {
    actor.require(Role.CONTRIBUTOR);
    return context.inTransaction(unit -> submit(unit, actor, Own.lock(unit, actor, id, revision)));
  }

  private Contribution submit(ReviewUnitOfWork unit, Actor actor, Contribution present) {
    if (!present.state().isOpen()) {
      throw ConflictException.of("submitted", present);
    }
    BankSnapshot snapshot = context.snapshot(unit);
    RejectedException.throwIfAny(present.content().errors(snapshot));
    return submit(
        unit,
        actor,
        present,
        new Examiner(snapshot.lexicon()).examine(present.content(), snapshot));
  }

  /** The record keeps what it says, since its author may change that later. */
  Contribution submit(
      ReviewUnitOfWork unit, Actor actor, Contribution present, Examination examination) {
    Contribution submitted = present.submitted(examination, context.now());
    unit.contributions().save(submitted);
    context.record(
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
