package org.hedgerow.review;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a reviewer can answer. */
public enum DecisionKind {
  /** It may stand in the bank. */
  APPROVE("approved"),
  /** It must be changed first. */
  RETURN("returned"),
  /** It isn't wanted. */
  DECLINE("declined"),
  /** One of the machine's findings is wrong here. */
  OVERRULE("overruled"),
  /** What was approved is taken out of the bank again. */
  WITHDRAW("withdrawn"),
  /** What was returned or declined is looked at once more. */
  REOPEN("reopened");

  private final String done;

  DecisionKind(String done) {
    this.done = done;
  }

  /** What has become of the contribution, as in {@code approved}. */
  public String done() {
    return done;
  }

  /** Whether it can be decided on something in this state. */
  public boolean isPossible(ContributionState state) {
    return switch (this) {
      case APPROVE, RETURN, DECLINE, OVERRULE -> state == ContributionState.SUBMITTED;
      case WITHDRAW -> state == ContributionState.APPROVED;
      case REOPEN -> state == ContributionState.RETURNED || state == ContributionState.DECLINED;
    };
  }

  /** Whether a reason must be given. */
  public boolean needsComment() {
    return this != APPROVE && this != REOPEN;
  }

  /** The name in tables and answers, in lower case. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The kind with this label, if there is one. */
  public static Optional<DecisionKind> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }
}
