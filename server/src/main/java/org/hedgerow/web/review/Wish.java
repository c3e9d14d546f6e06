package org.hedgerow.web.review;

import org.hedgerow.accounts.Actor;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.DecisionKind;
import org.hedgerow.review.ReviewServices;

/**
 * What a reviewer wants to decide.
 *
 * @param comment why; may be empty
 * @param finding the code of the one to overrule, or an empty text
 */
record Wish(int contribution, int revision, DecisionKind kind, String comment, String finding) {

  Contribution fulfil(ReviewServices services, Actor actor) {
    return switch (kind) {
      case APPROVE -> services.approve().execute(actor, contribution, revision, comment);
      case RETURN -> services.returnIt().execute(actor, contribution, revision, comment);
      case DECLINE -> services.decline().execute(actor, contribution, revision, comment);
      case OVERRULE -> services.overrule().execute(actor, contribution, revision, finding, comment);
      case WITHDRAW -> services.withdraw().execute(actor, contribution, revision, comment);
      case REOPEN -> services.reopen().execute(actor, contribution, revision, comment);
    };
  }
}
