package org.hedgerow.web.pages;

import static java.util.stream.Collectors.groupingBy;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.phonics.Accent;

/** Everything that a list can be made for: all values of all phonograms, and the plain shapes. */
record Chart(ChosenAccents accents, List<ChartValue> values, List<ChartShape> shapes) {

  Chart {
    values = List.copyOf(values);
    shapes = List.copyOf(shapes);
  }

  /** The accent whose sounds are shown. */
  Accent accent() {
    return accents.first();
  }

  /** The values that some of the accents have. */
  List<ChartValue> shown() {
    return values.stream()
        .filter(
            value ->
                accents.chosen().stream()
                    .anyMatch(each -> !value.correspondence().soundsIn(each).isEmpty()))
        .toList();
  }

  /** The sections with something in them, phonograms by alphabet. */
  List<ChartGroup> groups() {
    Map<ChartSection, List<ChartValue>> bySection =
        shown().stream()
            .collect(groupingBy(value -> ChartSection.of(value.correspondence(), accent())));
    return Arrays.stream(ChartSection.values())
        .map(section -> group(section, bySection.getOrDefault(section, List.of())))
        .filter(group -> !group.isEmpty())
        .toList();
  }

  private static ChartGroup group(ChartSection section, List<ChartValue> values) {
    Map<String, List<ChartValue>> byGrapheme =
        values.stream()
            .collect(
                groupingBy(
                    ChartValue::grapheme,
                    LinkedHashMap::new,
                    java.util.stream.Collectors.toList()));
    return ChartGroup.of(
        section,
        byGrapheme.entrySet().stream()
            .map(entry -> new ChartEntry(entry.getKey(), entry.getValue()))
            .toList());
  }

  /** The values of one phonogram, in their order. */
  List<ChartValue> valuesOf(String grapheme) {
    return values.stream().filter(value -> value.grapheme().equals(grapheme)).toList();
  }

  boolean isEmpty() {
    return values.isEmpty() && shapes.isEmpty();
  }
}
