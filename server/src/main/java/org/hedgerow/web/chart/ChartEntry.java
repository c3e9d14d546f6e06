package org.hedgerow.web.chart;

import java.util.List;

/** A phonogram in a section of the chart, with its values there. */
public record ChartEntry(String grapheme, List<ChartValue> values) {

  /** A picture box takes eight words or more (based on common practice). */
  private static final int ENOUGH = 8;

  public ChartEntry {
    values = List.copyOf(values);
  }

  /** How many words all its values have here. */
  int words() {
    return values.stream().mapToInt(ChartValue::words).sum();
  }

  boolean isRare() {
    return values.stream().allMatch(value -> value.words() < ENOUGH);
  }
}
