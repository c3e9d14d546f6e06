package org.hedgerow.web.words;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hedgerow.web.query.QueryString;

/** Notes each parameter of one question as it was understood. For one thread. */
final class Resolved {

  private final Map<String, String> values = new HashMap<>();

  public void note(String name, String value) {
    values.put(name, value);
  }

  /** Notes what was read, if anything was, and passes it on. */
  public <T> Optional<T> note(String name, Optional<T> value, Function<T, String> label) {
    value.ifPresent(found -> values.put(name, label.apply(found)));
    return value;
  }

  /** In the order in which questions are written; what says nothing is left out. */
  public QueryString inOrder() {
    Map<String, String> ordered = new LinkedHashMap<>();
    for (String name : WordQueryReader.PARAMETERS) {
      String value = values.getOrDefault(name, "");
      if (!value.isEmpty()) {
        ordered.put(name, value);
      }
    }
    return new QueryString(ordered);
  }
}
