package org.hedgerow.reading;

import java.util.List;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.phonics.Span;

/** A word may hold no phonogram beside its target, unless that is taught already. */
final class SecondPhonogram implements SpanRule {

  @Override
  public FindingCode code() {
    return FindingCode.SECOND_PHONOGRAM;
  }

  @Override
  public List<Finding> find(Passage passage) {
    return passage.blocked().stream()
        .filter(span -> !passage.hasTargetGrapheme(span) && isPhonogram(span))
        .map(span -> passage.finding(code(), span.letters(), message(span, passage)))
        .toList();
  }

  private static boolean isPhonogram(Span span) {
    CorrespondenceClass kind = span.correspondence().kind();
    return kind != CorrespondenceClass.SILENT && kind != CorrespondenceClass.IRREGULAR;
  }

  private static String message(Span span, Passage passage) {
    String ordinal = passage.targets().isEmpty() ? "a phonogram" : "a second phonogram";
    return "%s says %s here: %s".formatted(span.grapheme(), Passage.said(span), ordinal);
  }

  @Override
  public List<Example> examples() {
    return List.of(
        Example.finds("sheep", "SH IY1 P", "sh 1"),
        Example.finds("cheese", "CH IY1 Z", "ch 1"),
        Example.finds("go", "G OW1", ""),
        Example.finds("city", "S IH1 T IY0", ""),
        Example.leaves("shop", "SH AA1 P", "sh 1"),
        Example.leaves("duck", "D AH1 K", ""),
        Example.leaves("bank", "B AE1 NG K", ""));
  }
}
