package org.hedgerow.review;

import org.hedgerow.accounts.Actor;

/** What only an author may do to a contribution. */
final class Own {
  private Own() {}

  /**
   * @throws NotYoursException if it is somebody else's
   * @throws StaleException if it isn't the revision that the author saw
   */
  static Contribution lock(ReviewPage page, Actor actor, int id, int revision) {
    Contribution present = Workroom.lock(page, actor, id);
    if (!actor.is(present.author().accountId())) {
      throw new NotYoursException("Only %s can do that".formatted(present.author().name()));
    }
    requireRevision(present, revision);
    return present;
  }

  static void requireRevision(Contribution present, int revision) {
    if (present.revision() != revision) {
      throw new StaleException(revision, present);
    }
  }
}
