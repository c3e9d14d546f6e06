package org.hedgerow.review;

import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.pictures.CleanPicture;

/** Keeps a picture for a contribution to come. */
public final class SendPicture {
  private final ReviewContext context;

  SendPicture(ReviewContext context) {
    this.context = context;
  }

  /**
   * @return by which a proposal names it
   */
  public Upload execute(Actor actor, CleanPicture picture) {
    actor.require(Role.CONTRIBUTOR);
    int accountId = actor.requireAccount().id();
    Upload upload = Upload.of(picture, accountId);
    return context.inTransaction(
        page -> {
          page.uploads().add(upload, accountId, context.now());
          return upload;
        });
  }
}
