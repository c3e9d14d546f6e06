package org.hedgerow.review;

import java.util.List;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.reading.FindingCode;

/** Says that one of the machine's findings is wrong here, and why. */
final class Overrule {
  static final DecisionStep STEP =
      (page, present, actor, request) -> {
        requirePossible(present, request.finding());
        return DecisionStep.Outcome.overruled(present, request.finding());
      };

  private Overrule() {}

  private static void requirePossible(Contribution present, String code) {
    if (present.remarks().stream().noneMatch(remark -> remark.code().equals(code))) {
      throw refused("There is no such finding on this contribution.");
    }
    if (FindingCode.labelled(code).filter(Overruled::isPossible).isEmpty()) {
      throw refused(
          "That follows from letters and sounds. Correct the pronunciation or the alignment instead.");
    }
  }

  private static RejectedException refused(String message) {
    return new RejectedException(List.of(new FieldError("finding", message)));
  }
}
