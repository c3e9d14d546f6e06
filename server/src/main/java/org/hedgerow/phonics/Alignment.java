package org.hedgerow.phonics;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The spans of a word for one pronunciation: every letter and every sound stands in exactly one.
 *
 * @param spans in the order of their first letter, which is the order of the sounds
 * @param margin how much likelier this alignment is than the second best, as the difference of
 *     their costs (natural logarithm); infinite when there is no other
 */
public record Alignment(List<Span> spans, double margin) {

  /** Below this margin the second best alignment is close enough to need a look. */
  public static final double SMALL_MARGIN = 0.7;

  public Alignment {
    spans = List.copyOf(spans);
  }

  public boolean hasSmallMargin() {
    return margin < SMALL_MARGIN;
  }

  public List<Sound> sounds() {
    return spans.stream().flatMap(span -> span.sounds().stream()).toList();
  }

  /** As in the gold alignments: {@code k:k i-e:aɪ t:t}. */
  @Override
  public String toString() {
    return spans.stream().map(Span::toString).collect(Collectors.joining(" "));
  }
}
