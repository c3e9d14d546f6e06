package org.hedgerow.web.chart;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.phonics.Accent;
import org.hedgerow.web.page.ChosenAccents;

/**
 * Everything that a list can be made for: all values of all phonograms, and the plain shapes.
 * Immutable; it is grouped once, for it is shown often.
 */
public final class Chart {
  private final ChosenAccents accents;
  private final List<ChartValue> values;
  private final List<ChartShape> shapes;
  private final List<ChartValue> shown;
  private final List<ChartGroup> groups;

  public Chart(ChosenAccents accents, List<ChartValue> values, List<ChartShape> shapes) {
    this.accents = accents;
    this.values = List.copyOf(values);
    this.shapes = List.copyOf(shapes);
    this.shown = values.stream().filter(value -> isShown(value, accents)).toList();
    this.groups = groups(shown, accents.first());
  }

  private static boolean isShown(ChartValue value, ChosenAccents accents) {
    return accents.chosen().stream()
        .anyMatch(each -> !value.correspondence().soundsIn(each).isEmpty());
  }

  private static List<ChartGroup> groups(List<ChartValue> shown, Accent accent) {
    Map<ChartSection, List<ChartValue>> bySection =
        shown.stream()
            .collect(groupingBy(value -> ChartSection.of(value.correspondence(), accent)));
    return Arrays.stream(ChartSection.values())
        .map(section -> group(section, bySection.getOrDefault(section, List.of())))
        .filter(group -> !group.isEmpty())
        .toList();
  }

  private static ChartGroup group(ChartSection section, List<ChartValue> values) {
    Map<String, List<ChartValue>> byGrapheme =
        values.stream().collect(groupingBy(ChartValue::grapheme, LinkedHashMap::new, toList()));
    return ChartGroup.of(
        section,
        byGrapheme.entrySet().stream()
            .map(entry -> new ChartEntry(entry.getKey(), entry.getValue()))
            .toList());
  }

  public ChosenAccents accents() {
    return accents;
  }

  /** The accent whose sounds are shown. */
  public Accent accent() {
    return accents.first();
  }

  public List<ChartValue> values() {
    return values;
  }

  public List<ChartShape> shapes() {
    return shapes;
  }

  /** The values that some of the accents have. */
  public List<ChartValue> shown() {
    return shown;
  }

  /** The sections with something in them, phonograms by alphabet. */
  public List<ChartGroup> groups() {
    return groups;
  }

  /** The values of one phonogram, in their order. */
  public List<ChartValue> valuesOf(String grapheme) {
    return values.stream().filter(value -> value.grapheme().equals(grapheme)).toList();
  }

  public boolean isEmpty() {
    return values.isEmpty() && shapes.isEmpty();
  }
}
