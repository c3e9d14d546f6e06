package org.hedgerow.review;

import org.hedgerow.operations.Actor;

/** What only an author may do to a contribution. */
final class Own {
  private Own() {}

  /**
   * @throws OwnershipException if it is somebody else's
   * @throws StaleRevisionException if it isn't the revision that the author saw
   */
  static Contribution lock(ReviewUnitOfWork unit, Actor actor, int id, int revision) {
    Contribution present = ReviewContext.lock(unit, actor, id);
    if (!actor.is(present.author().accountId())) {
      throw new OwnershipException("Only %s can do that".formatted(present.author().name()));
    }
    requireRevision(present, revision);
    return present;
  }

  static void requireRevision(Contribution present, int revision) {
    if (present.revision() != revision) {
      throw new StaleRevisionException(revision, present);
    }
  }
}
