package org.hedgerow.reading;

import java.util.List;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.phonics.Span;

/** A letter says its basic sound, or is part of a phonogram that is taught. */
final class IrregularSpelling implements SpanRule {

  @Override
  public FindingCode code() {
    return FindingCode.IRREGULAR;
  }

  @Override
  public List<Finding> find(Passage passage) {
    return passage.blocked().stream()
        .filter(span -> span.correspondence().kind() == CorrespondenceClass.IRREGULAR)
        .filter(span -> !Standard.isReducedVowel(span.realisation()))
        .filter(span -> !passage.hasTargetGrapheme(span))
        .map(span -> passage.finding(code(), span.letters(), message(span)))
        .toList();
  }

  private static String message(Span span) {
    return "%s says %s here, which is not taught on its own"
        .formatted(span.grapheme(), Passage.said(span));
  }

  @Override
  public List<Example> examples() {
    return List.of(
        Example.finds("one", "W AH1 N", ""),
        Example.finds("busy", "B IH1 Z IY0", "y 1"),
        Example.leaves("lemon", "L EH1 M AH0 N", ""),
        Example.leaves("bus", "B AH1 S", ""));
  }
}
