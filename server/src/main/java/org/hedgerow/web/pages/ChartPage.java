package org.hedgerow.web.pages;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;

/**
 * The chart, or the part of it that fits what is looked for.
 *
 * @param find what is looked for, or an empty text
 * @param groups the sections that are shown
 * @param shapes the shapes that are shown
 * @param nearest phonograms to offer where nothing fits
 * @param total how many values there are in all
 */
record ChartPage(
    String find,
    List<ChartGroup> groups,
    List<ChartShape> shapes,
    List<ChartValue> nearest,
    int total) {

  static ChartPage of(Chart chart, Lexicon lexicon, String find) {
    int total = chart.values().size();
    if (find.isEmpty()) {
      return new ChartPage(find, chart.groups(), chart.shapes(), List.of(), total);
    }
    Finder finder = new Finder(chart, lexicon);
    Chart found = finder.find(find);
    List<ChartValue> nearest = found.isEmpty() ? finder.nearest(find) : List.of();
    return new ChartPage(find, found.groups(), found.shapes(), nearest, total);
  }

  int found() {
    return groups.stream()
            .flatMap(group -> group.entries().stream())
            .mapToInt(entry -> entry.values().size())
            .sum()
        + shapes.size();
  }

  /** What a screen reader says when something else is found. */
  String news() {
    if (find.isEmpty()) {
      return "All %d sounds of all phonograms are shown.".formatted(total);
    }
    return switch (found()) {
      case 0 -> "Nothing found for “%s”.".formatted(find);
      case 1 -> "1 found for “%s”.".formatted(find);
      default -> "%d found for “%s”.".formatted(found(), find);
    };
  }
}
