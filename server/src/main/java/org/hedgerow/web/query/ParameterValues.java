package org.hedgerow.web.query;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;

/**
 * The parameters of one query, each read once, with all defaults filled in. What can't be read adds
 * an error to those of the {@link Parameters}, and its default stands for it.
 */
public final class ParameterValues {
  private final Lexicon lexicon;
  private final Parameters given;
  private final List<Parameter<?>> table;
  private final Map<Parameter<?>, Object> values = new HashMap<>();

  private ParameterValues(Lexicon lexicon, Parameters given, List<Parameter<?>> table) {
    this.lexicon = lexicon;
    this.given = given;
    this.table = table;
  }

  /**
   * @param lexicon the edition that is asked
   * @param table in an order in which each parameter stands after those that it depends on
   */
  public static ParameterValues read(Lexicon lexicon, Parameters given, List<Parameter<?>> table) {
    ParameterValues values = new ParameterValues(lexicon, given, table);
    table.forEach(values::read);
    return values;
  }

  private <T> void read(Parameter<T> parameter) {
    given
        .text(parameter.name())
        .flatMap(text -> parameter.read(text, this))
        .or(() -> parameter.otherwise(this))
        .ifPresent(value -> values.put(parameter, value));
  }

  public Lexicon lexicon() {
    return lexicon;
  }

  /** The texts that were given. */
  public Parameters given() {
    return given;
  }

  /** The value of a parameter, or its default; empty if it has none. */
  @SuppressWarnings("unchecked") // put there by the parameter's own reader
  public <T> Optional<T> find(Parameter<T> parameter) {
    return Optional.ofNullable((T) values.get(parameter));
  }

  /** The value of a parameter that has a default. */
  public <T> T get(Parameter<T> parameter) {
    return find(parameter).orElseThrow();
  }

  /** The same query with another value for one parameter. */
  public <T> ParameterValues with(Parameter<T> parameter, T value) {
    ParameterValues changed = copy();
    changed.values.put(parameter, value);
    return changed;
  }

  /** The same query without one parameter. */
  public <T> ParameterValues without(Parameter<T> parameter) {
    ParameterValues changed = copy();
    changed.values.remove(parameter);
    parameter.otherwise(changed).ifPresent(value -> changed.values.put(parameter, value));
    return changed;
  }

  private ParameterValues copy() {
    ParameterValues copy = new ParameterValues(lexicon, given, table);
    copy.values.putAll(values);
    return copy;
  }

  /** Every parameter as it stands in addresses; those that say nothing are left out. */
  public QueryString texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    for (Parameter<?> parameter : table) {
      String text = text(parameter);
      if (!text.isEmpty()) {
        texts.put(parameter.name(), text);
      }
    }
    return new QueryString(texts);
  }

  /** The texts that a query which asks for nothing in particular doesn't have. */
  public QueryString chosen() {
    QueryString defaults = read(lexicon, new Parameters(Map.of(), List.of()), table).texts();
    QueryString chosen = texts();
    for (Map.Entry<String, String> each : defaults.parameters().entrySet()) {
      if (chosen.get(each.getKey()).equals(Optional.of(each.getValue()))) {
        chosen = chosen.without(each.getKey());
      }
    }
    return chosen;
  }

  /** How the query is repeated in an answer: numbers as numbers, lists as lists. */
  public Map<String, Object> json() {
    Map<String, Object> view = new LinkedHashMap<>();
    for (Parameter<?> parameter : table) {
      String text = text(parameter);
      if (parameter.json() == Parameter.JsonForm.LIST || !text.isEmpty()) {
        json(parameter.json(), text).ifPresent(value -> view.put(parameter.name(), value));
      }
    }
    return view;
  }

  private static Optional<Object> json(Parameter.JsonForm form, String text) {
    return switch (form) {
      case TEXT -> Optional.of(text);
      case NUMBER -> Optional.of(Integer.valueOf(text));
      case BOOLEAN -> Optional.of(Boolean.valueOf(text));
      case LIST -> Optional.of(text.isEmpty() ? List.of() : Arrays.asList(text.split(",", -1)));
      case NONE -> Optional.empty();
    };
  }

  private <T> String text(Parameter<T> parameter) {
    return find(parameter).map(parameter::label).orElse("");
  }
}
