package org.hedgerow.review.curriculum;

import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.AuditEntry;
import org.hedgerow.operations.Role;
import org.hedgerow.operations.StaleUpdateException;
import org.hedgerow.review.ReviewContext;

/** What all changes of rules, sequences and sight words have in common. */
final class ChangeCurriculum {
  /** What becomes of them. */
  @FunctionalInterface
  interface Edit {
    Edited apply(Curriculum present);
  }

  /**
   * A change.
   *
   * @param mark of what it takes the place of, as it stands
   * @param action a noun and a verb for the record
   * @param subject what it is done to, for the record
   * @param summary for people
   */
  record Edited(
      Curriculum teaching,
      String mark,
      String action,
      String subject,
      String summary,
      Map<String, Object> before,
      Map<String, Object> after) {}

  private final ReviewContext context;

  ChangeCurriculum(ReviewContext context) {
    this.context = context;
  }

  /**
   * @param seen the mark of what the administrator saw; empty if it doesn't matter
   * @return the number of the edition
   * @throws StaleUpdateException if it isn't so any more
   */
  int change(Actor actor, Optional<String> seen, Edit edit) {
    actor.require(Role.ADMINISTRATOR);
    int edition =
        context.inTransaction(
            page -> {
              page.bank().lock();
              Edited edited = edit.apply(page.teaching().current());
              if (seen.isPresent() && !seen.get().equals(edited.mark())) {
                throw new StaleUpdateException(
                    "Somebody else has changed it in the meantime, or there is one of this name already.");
              }
              page.audit()
                  .add(
                      new AuditEntry(
                          actor,
                          context.now(),
                          edited.action(),
                          edited.subject(),
                          edited.before(),
                          edited.after()));
              return page.teaching()
                  .publish(edited.teaching(), edited.summary(), actor, context.now());
            });
    context.published().accept(edition);
    return edition;
  }
}
