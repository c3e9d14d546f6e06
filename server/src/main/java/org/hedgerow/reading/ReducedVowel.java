package org.hedgerow.reading;

import java.util.List;
import org.hedgerow.phonics.Span;

/** A vowel letter in an unstressed syllable does not say the sound that the child has learnt. */
final class ReducedVowel implements SpanRule {

  @Override
  public FindingCode code() {
    return FindingCode.REDUCED_VOWEL;
  }

  @Override
  public List<Finding> find(Passage passage) {
    return passage.blocked().stream()
        .filter(span -> Standard.isReducedVowel(span.realisation()))
        .filter(span -> !passage.hasTargetGrapheme(span))
        .map(span -> passage.finding(code(), span.letters(), message(span)))
        .toList();
  }

  private static String message(Span span) {
    return "%s is reduced to %s here".formatted(span.grapheme(), Passage.said(span));
  }

  @Override
  public List<Example> examples() {
    return List.of(
        Example.finds("lemon", "L EH1 M AH0 N", ""),
        Example.finds("rocket", "R AA1 K IH0 T", ""),
        Example.leaves("napkin", "N AE1 P K IH0 N", ""),
        Example.leaves("ladder", "L AE1 D ER0", "er 1"));
  }
}
