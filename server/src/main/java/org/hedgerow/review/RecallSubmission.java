package org.hedgerow.review;

import java.util.Map;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;

/** Makes what was submitted a draft again, as long as nobody has decided. */
public final class RecallSubmission {
  private final ReviewContext context;

  RecallSubmission(ReviewContext context) {
    this.context = context;
  }

  /**
   * @throws ConflictException if it doesn't wait for a decision
   */
  public Contribution execute(Actor actor, int id, int revision) {
    actor.require(Role.CONTRIBUTOR);
    return context.inTransaction(
        page -> {
          Contribution present = Own.lock(page, actor, id, revision);
          if (present.state() != ContributionState.SUBMITTED) {
            throw ConflictException.of("taken back", present);
          }
          Contribution draft = present.in(ContributionState.DRAFT, context.now());
          page.contributions().save(draft);
          context.record(
              page,
              actor,
              "taken-back",
              draft,
              Map.of("state", present.state().label()),
              Map.of("state", draft.state().label()));
          return draft;
        });
  }
}
