package org.hedgerow.lexicon;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Who stands behind a word, the most trusted first. */
public enum Status {
  /** Approved by experienced teachers. */
  APPROVED,
  /** Taken from a dictionary. */
  SEEDED;

  /** The name in tables and answers, in lower case. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The status with this label, if there is one. */
  public static Optional<Status> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }
}
