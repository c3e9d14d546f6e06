package org.hedgerow.web.people;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.hedgerow.web.query.QueryString;
import org.hedgerow.web.query.ValidationError;

/**
 * The form above the record of what was done.
 *
 * @param typed by field
 * @param errors by field
 */
record AuditFilter(Map<String, String> typed, Map<String, String> errors) {
  /** Something to choose. */
  record Option(String value, String label) {}

  static final List<String> FIELDS = List.of("actor", "action", "subject", "from", "to");

  static AuditFilter of(Map<String, List<String>> given, List<ValidationError> found) {
    Map<String, String> typed = new LinkedHashMap<>();
    given.forEach((name, values) -> typed.put(name, values.get(0)));
    Map<String, String> errors = new LinkedHashMap<>();
    found.forEach(error -> errors.putIfAbsent(error.parameter(), error.message()));
    return new AuditFilter(typed, errors);
  }

  String typed(String field) {
    return typed.getOrDefault(field, "");
  }

  String error(String field) {
    return errors.getOrDefault(field, "");
  }

  /** What is wrong with none of the fields that are shown. */
  List<String> otherErrors() {
    return errors.entrySet().stream()
        .filter(each -> !FIELDS.contains(each.getKey()))
        .map(Map.Entry::getValue)
        .toList();
  }

  boolean hasErrors() {
    return !errors.isEmpty();
  }

  boolean isEmpty() {
    return typed.keySet().stream().noneMatch(FIELDS::contains);
  }

  /** The fields as they stand in an address. */
  QueryString query() {
    Map<String, String> query = new LinkedHashMap<>(typed);
    query.keySet().retainAll(FIELDS);
    return new QueryString(query);
  }

  /** Every noun that actions begin with, and after each its actions. */
  static List<Option> options(List<String> actions) {
    List<Option> options = new ArrayList<>();
    for (String noun : new TreeSet<>(actions.stream().map(AuditFilter::noun).toList())) {
      options.add(new Option(noun + ".", ShownRecords.inWords(noun) + ": all"));
      actions.stream()
          .filter(action -> noun(action).equals(noun))
          .forEach(action -> options.add(new Option(action, ShownRecords.inWords(action))));
    }
    return List.copyOf(options);
  }

  private static String noun(String action) {
    return action.substring(0, action.indexOf('.'));
  }
}
