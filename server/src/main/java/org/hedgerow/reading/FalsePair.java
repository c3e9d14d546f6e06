package org.hedgerow.reading;

import java.util.List;

/**
 * Letters of a phonogram that meet but say separate sounds mislead a child who knows the phonogram:
 * <em>mishap</em>, <em>pothole</em>.
 */
final class FalsePair implements SpanRule {

  @Override
  public FindingCode code() {
    return FindingCode.FALSE_PAIR;
  }

  @Override
  public List<Finding> find(Passage passage) {
    return passage.falsePairs().stream()
        .map(pair -> passage.finding(code(), pair.letters(), message(pair)))
        .toList();
  }

  private static String message(FalsePairs.Pair pair) {
    return "%s look like %s but say separate sounds here"
        .formatted(String.join(" and ", pair.grapheme().split("")), pair.grapheme());
  }

  @Override
  public List<Example> examples() {
    return List.of(
        Example.finds("mishap", "M IH1 S HH AE2 P", ""),
        Example.finds("pothole", "P AA1 T HH OW2 L", "o-e 1"),
        Example.finds("cooperate", "K OW0 AA1 P ER0 EY2 T", ""),
        Example.leaves("wooden", "W UH1 D AH0 N", "oo 2"),
        Example.leaves("ship", "SH IH1 P", "sh 1"),
        Example.leaves("milk", "M IH1 L K", ""));
  }
}
