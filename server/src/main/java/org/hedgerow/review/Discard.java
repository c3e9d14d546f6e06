package org.hedgerow.review;

import java.util.Map;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;

/** Deletes a draft that was never decided on; what was decided stays for good. */
public final class Discard {
  private final ReviewContext context;

  Discard(ReviewContext context) {
    this.context = context;
  }

  /**
   * @throws ConflictException if it is no draft, or reviewers have decided on it before
   */
  public void execute(Actor actor, int id, int revision) {
    actor.require(Role.CONTRIBUTOR);
    context.inTransaction(
        page -> {
          Contribution present = Own.lock(page, actor, id, revision);
          if (present.state() != ContributionState.DRAFT) {
            throw ConflictException.of("discarded", present);
          }
          if (!page.decisions().on(id).isEmpty()) {
            throw new ConflictException(
                "Contribution %d can’t be discarded: reviewers have decided on it".formatted(id),
                present);
          }
          page.contributions().remove(id);
          context.record(page, actor, "discarded", present, Map.of("state", "draft"), Map.of());
          return id;
        });
  }
}
