package org.hedgerow.seedlexicon;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A named set of reading rules.
 *
 * @param name letters
 * @param title what a teacher calls it
 * @param switches by the name of each rule, whether it is on
 * @param note for whom it is
 */
public record RuleSetRow(String name, String title, Map<String, Boolean> switches, String note) {

  private static final List<String> OTHERS = List.of("name", "title", "note");

  public RuleSetRow {
    switches = Map.copyOf(switches);
  }

  static RuleSetRow from(TsvRow row) {
    Map<String, Boolean> switches = new LinkedHashMap<>();
    row.columns().stream()
        .filter(column -> !OTHERS.contains(column))
        .forEach(column -> switches.put(column, row.yes(column)));
    return new RuleSetRow(
        row.required("name"), row.required("title"), switches, row.required("note"));
  }
}
