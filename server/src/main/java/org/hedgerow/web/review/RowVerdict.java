package org.hedgerow.web.review;

import java.util.Locale;

/** What can be done with something that isn't a contribution yet. */
enum RowVerdict {
  /** It can be submitted, and nothing speaks against it. */
  READY,
  /** It can be submitted; a person should look at what the machine found or guessed. */
  LOOK,
  /** It can't be submitted. */
  REFUSED,
  /** It stands in the same table before. */
  TWICE,
  /** Another about the same waits for a decision. */
  WAITING;

  String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  boolean isGood() {
    return this == READY || this == LOOK;
  }
}
