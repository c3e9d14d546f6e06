package org.hedgerow.reading;

import java.util.Locale;

/** What a check says of a word, worst last. */
public enum Verdict {
  /** A child can read it without meeting anything untaught. */
  PASS,
  /** A person must look: something the machine cannot decide. */
  LOOK,
  /** It does not fit. */
  FAIL;

  /** The name in answers, in lower case. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The worse of two. */
  public Verdict and(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
