package org.hedgerow.review;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What kind of change a contribution proposes. */
public enum ContributionKind {
  WORD,
  PRONUNCIATION,
  ALIGNMENT,
  TAGS,
  PICTURE,
  SENTENCE,
  WITHDRAWAL;

  /** The name in tables and answers, in lower case. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The kind with this label, if there is one. */
  public static Optional<ContributionKind> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }
}
