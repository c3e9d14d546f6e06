package org.hedgerow.web.query;

import static java.util.stream.Collectors.joining;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Parameters in their order, each with one value, as they stand in an address. Immutable. */
public final class QueryString {

  private final Map<String, String> parameters;

  /**
   * @param parameters in their order
   */
  public QueryString(Map<String, String> parameters) {
    this.parameters = Collections.unmodifiableMap(new LinkedHashMap<>(parameters));
  }

  public Map<String, String> parameters() {
    return parameters;
  }

  public Optional<String> get(String name) {
    return Optional.ofNullable(parameters.get(name));
  }

  /** With another value for a parameter, which keeps its place if it has one. */
  public QueryString with(String name, String value) {
    Map<String, String> changed = new LinkedHashMap<>(parameters);
    changed.put(name, value);
    return new QueryString(changed);
  }

  public QueryString without(String name) {
    Map<String, String> changed = new LinkedHashMap<>(parameters);
    changed.remove(name);
    return new QueryString(changed);
  }

  /** As in an address, without the question mark: {@code phonogram=oa&value=1}. */
  @Override
  public String toString() {
    return parameters.entrySet().stream()
        .map(each -> encoded(each.getKey()) + "=" + encoded(each.getValue()))
        .collect(joining("&"));
  }

  /** Commas may stand in a query as they are, and lists are easier to read so. */
  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("%2C", ",");
  }
}
