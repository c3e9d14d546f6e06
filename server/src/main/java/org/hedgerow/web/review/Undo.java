package org.hedgerow.web.review;

import java.util.Optional;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.DecisionKind;

/**
 * A decision that can be undone by another.
 *
 * @param what was decided, in words
 * @param decision that undoes it
 */
record Undo(int id, int revision, String subject, String what, String decision) {
  static Optional<Undo> of(Contribution decided) {
    return switch (decided.state()) {
      case APPROVED -> undo(decided, "approved", DecisionKind.WITHDRAW);
      case RETURNED -> undo(decided, "returned", DecisionKind.REOPEN);
      case DECLINED -> undo(decided, "declined", DecisionKind.REOPEN);
      case DRAFT, SUBMITTED, WITHDRAWN -> Optional.empty();
    };
  }

  private static Optional<Undo> undo(Contribution decided, String what, DecisionKind by) {
    return Optional.of(
        new Undo(decided.id(), decided.revision(), decided.proposal().subject(), what, by.label()));
  }
}
