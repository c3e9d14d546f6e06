package org.hedgerow.web.chart;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A section of the chart.
 *
 * @param common phonograms with words enough for material, those with most words first
 * @param rare phonograms with few words or none, by alphabet
 */
public record ChartGroup(ChartSection section, List<ChartEntry> common, List<ChartEntry> rare) {

  private static final Comparator<ChartEntry> MOST_WORDS_FIRST =
      Comparator.comparing(ChartEntry::words).reversed();

  static ChartGroup of(ChartSection section, List<ChartEntry> entries) {
    return new ChartGroup(
        section,
        entries.stream().filter(entry -> !entry.isRare()).sorted(MOST_WORDS_FIRST).toList(),
        entries.stream().filter(ChartEntry::isRare).toList());
  }

  boolean isEmpty() {
    return common.isEmpty() && rare.isEmpty();
  }

  /** All of them, the common ones first. */
  public List<ChartEntry> entries() {
    return Stream.concat(common.stream(), rare.stream()).toList();
  }
}
