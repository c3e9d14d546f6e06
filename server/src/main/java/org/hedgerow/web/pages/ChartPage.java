package org.hedgerow.web.pages;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;

/**
 * The chart, or the part of it that fits what is looked for.
 *
 * @param find what is looked for, or an empty text
 * @param groups the sections that are shown
 * @param shapes the shapes that are shown
 * @param nearest phonograms to offer where nothing fits
 * @param total how many values there are in all
 * @param accents the accents that count, and the form to choose others
 * @param all the address of the whole chart
 */
record ChartPage(
    String find,
    List<ChartGroup> groups,
    List<ChartShape> shapes,
    List<ChartValue> nearest,
    int total,
    AccentForm accents,
    String all) {

  static ChartPage of(Chart chart, Lexicon lexicon, String find) {
    int total = chart.shown().size();
    if (find.isEmpty()) {
      return new ChartPage(
          find, chart.groups(), chart.shapes(), List.of(), total, form(chart, find), all(chart));
    }
    Finder finder = new Finder(chart, lexicon);
    Chart found = finder.find(find);
    List<ChartValue> nearest = found.isEmpty() ? finder.nearest(find) : List.of();
    return new ChartPage(
        find, found.groups(), found.shapes(), nearest, total, form(chart, find), all(chart));
  }

  private static String all(Chart chart) {
    return ListAddress.ofChart(chart.accents().parameter());
  }

  private static AccentForm form(Chart chart, String find) {
    List<Choice> hidden =
        find.isEmpty() ? List.of() : List.of(new Choice(find, PageQuestion.FIND, true));
    return new AccentForm(
        chart.accents().names(),
        chart.accents().choices(),
        List.of(),
        hidden,
        Optional.of("/compare"));
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
