package org.hedgerow.reading;

import java.util.List;

/** A word holds its phonogram once. */
final class RepeatedTarget implements SpanRule {

  @Override
  public FindingCode code() {
    return FindingCode.REPEATED_TARGET;
  }

  @Override
  public List<Finding> find(Passage passage) {
    List<Integer> letters =
        passage.targets().stream().flatMap(span -> span.letters().stream()).toList();
    if (passage.targets().size() < 2) {
      return List.of();
    }
    String message = passage.targetName() + " comes up more than once";
    return List.of(passage.finding(code(), letters, message));
  }

  @Override
  public List<Example> examples() {
    return List.of(
        Example.finds("church", "CH ER1 CH", "ch 1"),
        Example.finds("shush", "SH AH1 SH", "sh 1"),
        Example.leaves("chin", "CH IH1 N", "ch 1"));
  }
}
