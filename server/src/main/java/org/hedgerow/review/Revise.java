package org.hedgerow.review;

import java.util.Map;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;

/** Changes what a draft says, or something that was returned: a new revision. */
public final class Revise {
  private final ReviewContext context;

  Revise(ReviewContext context) {
    this.context = context;
  }

  /**
   * @param revision which the author saw
   * @throws StaleRevisionException if it has been changed since
   * @throws ConflictException if it isn't open any more
   */
  public Contribution execute(Actor actor, int id, int revision, Content content) {
    actor.require(Role.CONTRIBUTOR);
    return context.inTransaction(
        page -> {
          Contribution present = Own.lock(page, actor, id, revision);
          if (!present.state().isOpen()) {
            throw ConflictException.of("changed", present);
          }
          if (present.content().equals(content)) {
            return present;
          }
          Contribution changed = present.saying(content, context.now());
          page.contributions().save(changed);
          context.record(
              page,
              actor,
              "changed",
              changed,
              Map.of("revision", revision),
              Map.of("revision", changed.revision()));
          return changed;
        });
  }
}
