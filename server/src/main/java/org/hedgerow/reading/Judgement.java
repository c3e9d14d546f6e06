package org.hedgerow.reading;

import java.util.List;

/** What the rules make of a word in one accent. */
record Judgement(String accent, Verdict verdict, List<Finding> findings) {

  Judgement {
    findings = List.copyOf(findings);
  }

  boolean passes() {
    return verdict == Verdict.PASS;
  }
}
