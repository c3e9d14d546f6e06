package org.hedgerow.reading;

import java.util.List;

/** A word for a phonogram must hold it. */
final class NoTarget implements SpanRule {

  @Override
  public FindingCode code() {
    return FindingCode.NO_TARGET;
  }

  @Override
  public List<Finding> find(Passage passage) {
    if (passage.standard().targets().isEmpty() || !passage.targets().isEmpty()) {
      return List.of();
    }
    String message = "there is no %s in this word".formatted(passage.targetName());
    return List.of(passage.finding(code(), List.of(), message));
  }

  @Override
  public List<Example> examples() {
    return List.of(
        Example.finds("cat", "K AE1 T", "oa 1"),
        Example.finds("mishap", "M IH1 S HH AE2 P", "sh 1"),
        Example.leaves("boat", "B OW1 T", "oa 1"),
        Example.leaves("cat", "K AE1 T", ""));
  }
}
