package org.hedgerow.reading;

import java.util.List;

/** An alignment that is hardly likelier than another needs a look. */
final class SmallMargin implements SpanRule {

  @Override
  public FindingCode code() {
    return FindingCode.SMALL_MARGIN;
  }

  @Override
  public List<Finding> find(Passage passage) {
    if (!passage.alignment().hasSmallMargin()) {
      return List.of();
    }
    String message = "the letters can be matched to the sounds in two ways that are almost as good";
    return List.of(passage.finding(code(), List.of(), message));
  }

  @Override
  public List<Example> examples() {
    return List.of(
        Example.finds("traveled", "T R AE1 V AH0 L D", ""),
        Example.leaves("boat", "B OW1 T", "oa 1"));
  }
}
