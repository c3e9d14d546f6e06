package org.hedgerow.web.phonograms;

import java.util.List;

/** A phonogram in a section of the chart, with its values there. */
record ChartEntry(String grapheme, List<ChartValue> values) {

  /** A picture box takes eight words or more (common practice, no source). */
  private static final int ENOUGH = 8;

  ChartEntry {
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
