package org.hedgerow.reading;

import java.util.List;
import org.hedgerow.phonics.Span;

/** The values of a phonogram are never mixed. */
final class OtherValue implements SpanRule {

  @Override
  public FindingCode code() {
    return FindingCode.OTHER_VALUE;
  }

  @Override
  public List<Finding> find(Passage passage) {
    return passage.blocked().stream()
        .filter(passage::hasTargetGrapheme)
        .map(span -> passage.finding(code(), span.letters(), message(span, passage)))
        .toList();
  }

  private static String message(Span span, Passage passage) {
    String says = Passage.said(span).equals("//") ? "is silent" : "says " + Passage.said(span);
    return "%s %s here; this list is for %s".formatted(span.grapheme(), says, passage.targetName());
  }

  @Override
  public List<Example> examples() {
    return List.of(
        Example.finds("wool", "W UH1 L", "oo 1"),
        Example.finds("head", "HH EH1 D", "ea 1"),
        Example.leaves("moon", "M UW1 N", "oo 1"),
        Example.leaves("wool", "W UH1 L", "oo 2"));
  }
}
