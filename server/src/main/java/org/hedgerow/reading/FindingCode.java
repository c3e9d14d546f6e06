package org.hedgerow.reading;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The kinds of findings; codes are stable, programs may depend on them. */
public enum FindingCode {
  NO_TARGET(Verdict.FAIL),
  OTHER_VALUE(Verdict.FAIL),
  SECOND_PHONOGRAM(Verdict.FAIL),
  REPEATED_TARGET(Verdict.FAIL),
  SILENT_LETTER(Verdict.FAIL),
  IRREGULAR(Verdict.FAIL),
  REDUCED_VOWEL(Verdict.FAIL),
  FALSE_PAIR(Verdict.FAIL),
  INFLECTED(Verdict.FAIL),
  SEVERAL_PRONUNCIATIONS(Verdict.LOOK),
  ACCENTS_DIFFER(Verdict.FAIL),
  SMALL_MARGIN(Verdict.LOOK),
  NAME(Verdict.FAIL),
  NOT_FOR_CHILDREN(Verdict.FAIL),
  UNKNOWN_WORD(Verdict.LOOK);

  private final Verdict verdict;

  FindingCode(Verdict verdict) {
    this.verdict = verdict;
  }

  /** The best verdict that a word with such a finding can get. */
  public Verdict verdict() {
    return verdict;
  }

  /** The code with this label, if there is one. */
  public static Optional<FindingCode> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }

  /** The code in answers, in lower case with hyphens. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
