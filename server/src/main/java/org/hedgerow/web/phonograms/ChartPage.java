package org.hedgerow.web.phonograms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.chart.Chart;
import org.hedgerow.web.chart.ChartGroup;
import org.hedgerow.web.chart.ChartShape;
import org.hedgerow.web.chart.ChartValue;
import org.hedgerow.web.page.AccentForm;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.OldEdition;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.ParameterNames;

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
 * @param edition the one that is named, as in addresses
 * @param old that it isn't the newest
 */
public record ChartPage(
    String find,
    List<ChartGroup> groups,
    List<ChartShape> shapes,
    List<ChartValue> nearest,
    int total,
    AccentForm accents,
    String all,
    Optional<String> edition,
    Optional<OldEdition> old) {

  /**
   * @param edition the one that is named, as in addresses
   */
  public static ChartPage of(
      Chart chart,
      Lexicon lexicon,
      String find,
      Optional<String> edition,
      Optional<OldEdition> old) {
    Finder finder = new Finder(chart, lexicon);
    Chart found = find.isEmpty() ? chart : finder.find(find);
    return new ChartPage(
        find,
        found.groups(),
        found.shapes(),
        found.isEmpty() ? finder.nearest(find) : List.of(),
        chart.shown().size(),
        form(chart, find, edition),
        ListAddress.inEdition(ListAddress.ofChart(chart.accents().parameter()), edition),
        edition,
        old);
  }

  /** An address in the edition that is shown. */
  String in(String address) {
    return ListAddress.inEdition(address, edition);
  }

  private static AccentForm form(Chart chart, String find, Optional<String> edition) {
    List<Choice> hidden = new ArrayList<>();
    if (!find.isEmpty()) {
      hidden.add(new Choice(find, ParameterNames.FIND, true));
    }
    edition.ifPresent(number -> hidden.add(new Choice(number, EditionChoice.PARAMETER, true)));
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
