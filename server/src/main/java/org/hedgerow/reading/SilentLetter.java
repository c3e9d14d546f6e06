package org.hedgerow.reading;

import java.util.List;
import org.hedgerow.phonics.CorrespondenceClass;

/** Every letter speaks, or belongs to a grapheme that does. */
final class SilentLetter implements SpanRule {

  @Override
  public FindingCode code() {
    return FindingCode.SILENT_LETTER;
  }

  @Override
  public List<Finding> find(Passage passage) {
    return passage.blocked().stream()
        .filter(span -> span.correspondence().kind() == CorrespondenceClass.SILENT)
        .filter(span -> !passage.hasTargetGrapheme(span))
        .map(span -> passage.finding(code(), span.letters(), span.grapheme() + " is silent here"))
        .toList();
  }

  @Override
  public List<Example> examples() {
    return List.of(
        Example.finds("come", "K AH1 M", "o 2"),
        Example.finds("hour", "AW1 ER0", "our 3"),
        Example.leaves("cake", "K EY1 K", "a-e 1"),
        Example.leaves("hat", "HH AE1 T", ""));
  }
}
