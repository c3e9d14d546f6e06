package org.hedgerow.review;

import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.operations.Actor;

/** What a kind of decision makes of a contribution, within the transaction that decides. */
@FunctionalInterface
interface DecisionStep {

  /**
   * @param present as the reviewer saw it
   */
  Outcome take(ReviewUnitOfWork unit, Contribution present, Actor actor, DecisionRequest request);

  /**
   * What came of it.
   *
   * @param contribution as it is from now on
   * @param edition which was published
   * @param overruled the code of the finding that is wrong here
   */
  record Outcome(Contribution contribution, OptionalInt edition, Optional<String> overruled) {
    static Outcome of(Contribution contribution) {
      return new Outcome(contribution, OptionalInt.empty(), Optional.empty());
    }

    static Outcome published(Contribution contribution, int edition) {
      return new Outcome(contribution, OptionalInt.of(edition), Optional.empty());
    }

    static Outcome overruled(Contribution contribution, String code) {
      return new Outcome(contribution, OptionalInt.empty(), Optional.of(code));
    }
  }
}
