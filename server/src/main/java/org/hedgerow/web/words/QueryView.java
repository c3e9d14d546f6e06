package org.hedgerow.web.words;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hedgerow.web.query.EditionChoice;

/**
 * How a question is repeated in its answer: every parameter, numbers as numbers, lists as lists.
 */
final class QueryView {

  private static final Set<String> NUMBERS = Set.of("value", "commonness", "picturable", "limit");
  private static final Set<String> LISTS = Set.of("accent", "meaning", "include", "taught");

  private QueryView() {}

  static Map<String, Object> of(WordRequest request) {
    Map<String, Object> view = new LinkedHashMap<>();
    for (String name : WordQueryReader.PARAMETERS) {
      String value = request.resolved().without(EditionChoice.PARAMETER).get(name).orElse("");
      if (LISTS.contains(name)) {
        view.put(name, list(value));
      } else if (!value.isEmpty()) {
        view.put(name, single(name, value));
      }
    }
    request.after().ifPresent(cursor -> view.put("after", cursor));
    return view;
  }

  private static Object single(String name, String value) {
    if (name.equals("pictured")) {
      return Boolean.valueOf(value);
    }
    return NUMBERS.contains(name) ? Integer.valueOf(value) : value;
  }

  private static List<String> list(String value) {
    return value.isEmpty() ? List.of() : Arrays.asList(value.split(",", -1));
  }
}
