package org.hedgerow.review;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How far a contribution has come. */
public enum ContributionState {
  /** Only its author sees it. */
  DRAFT,
  /** Waits for a decision. */
  SUBMITTED,
  /** Stands in the bank. */
  APPROVED,
  /** Its author is asked to change it. */
  RETURNED,
  /** Not wanted. */
  DECLINED,
  /** Was approved, and was taken out of the bank again. */
  WITHDRAWN;

  /** Whether its author may change what it says. */
  public boolean isOpen() {
    return this == DRAFT || this == RETURNED;
  }

  /** The name in tables and answers, in lower case. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The state with this label, if there is one. */
  public static Optional<ContributionState> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }
}
