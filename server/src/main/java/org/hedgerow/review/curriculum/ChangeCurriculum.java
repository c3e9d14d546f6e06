package org.hedgerow.review.curriculum;

import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.AuditEntry;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;
import org.hedgerow.operations.StaleUpdateException;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.review.ReviewContext;
import org.hedgerow.review.ReviewUnitOfWork;

/** Changes reading rules, sequences and sight words, each time in a new edition. */
public final class ChangeCurriculum {
  private final ReviewContext context;

  public ChangeCurriculum(ReviewContext context) {
    this.context = context;
  }

  /**
   * @param seen {@link SetKind#mark} of what the administrator saw there; empty if it doesn't
   *     matter
   * @return the number of the edition
   * @throws RejectedException with all that is wrong
   * @throws org.hedgerow.operations.NotFoundException if what is withdrawn isn't there
   * @throws StaleUpdateException if something else stands there by now
   */
  public int execute(Actor actor, CurriculumChange change, Optional<String> seen) {
    Catalogue catalogue = context.newest().get().catalogue();
    RejectedException.throwIfAny(change.errors(catalogue));
    actor.require(Role.ADMINISTRATOR);
    int edition =
        context.inTransaction(
            unit -> {
              unit.bank().lock();
              CurriculumChange.Outcome outcome =
                  change.apply(unit.curriculum().current(), catalogue);
              if (seen.isPresent() && !seen.get().equals(outcome.replaced())) {
                throw new StaleUpdateException(
                    "Somebody else has changed it in the meantime, or there is one of this name already.");
              }
              return publish(unit, actor, outcome);
            });
    context.published().accept(edition);
    return edition;
  }

  private int publish(ReviewUnitOfWork unit, Actor actor, CurriculumChange.Outcome outcome) {
    unit.audit()
        .add(
            new AuditEntry(
                actor,
                context.now(),
                outcome.action(),
                outcome.subject(),
                outcome.before(),
                outcome.after()));
    return unit.curriculum().publish(outcome.curriculum(), outcome.summary(), actor, context.now());
  }
}
