package org.hedgerow.review;

import java.util.List;
import org.hedgerow.accounts.Actor;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.accounts.RefusedException;
import org.hedgerow.reading.FindingCode;

/** Says that one of the machine's findings is wrong here, and why. */
public final class Overrule {
  private final Deciding deciding;

  Overrule(Workroom room) {
    this.deciding = new Deciding(room);
  }

  /**
   * @param code of the finding
   */
  public Contribution execute(Actor actor, int id, int revision, String code, String comment) {
    return deciding.decide(
        actor,
        id,
        revision,
        DecisionKind.OVERRULE,
        comment,
        (page, present) -> {
          requirePossible(present, code);
          return Deciding.Outcome.overruled(present, code);
        });
  }

  private static void requirePossible(Contribution present, String code) {
    if (present.remarks().stream().noneMatch(remark -> remark.code().equals(code))) {
      throw refused("There is no such finding on this contribution.");
    }
    if (FindingCode.labelled(code).filter(Overruled::isPossible).isEmpty()) {
      throw refused(
          "That follows from letters and sounds. Correct the pronunciation or the alignment instead.");
    }
  }

  private static RefusedException refused(String message) {
    return new RefusedException(List.of(new FieldFault("finding", message)));
  }
}
