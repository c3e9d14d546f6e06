package org.hedgerow.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.hedgerow.web.query.Parameter;
import org.hedgerow.web.query.QueryString;

/** A field of a form in which one of a few things is chosen. */
public record Field(String name, String label, List<Choice> choices) {

  public Field {
    choices = List.copyOf(choices);
  }

  /** Whether something else than the first, the usual, is chosen. */
  public boolean isChanged() {
    return !choices.get(0).chosen();
  }

  /**
   * @param parameter which is offered
   * @param address where what is chosen stands
   */
  public static Field of(Parameter<?> parameter, QueryString address) {
    return of(parameter, parameter.offered(), address);
  }

  /**
   * @param texts what is chosen from instead, by value
   */
  public static Field of(Parameter<?> parameter, Map<String, String> texts, QueryString address) {
    return of(
        parameter.name(),
        parameter.offer().orElseThrow().title(),
        texts,
        address.get(parameter.name()).orElse(texts.keySet().iterator().next()),
        parameter::words);
  }

  /**
   * @param texts what is chosen from, by value
   * @param chosen the value chosen, which is added if it is none of them
   * @param other says such a value in words
   */
  public static Field of(
      String name,
      String label,
      Map<String, String> texts,
      String chosen,
      UnaryOperator<String> other) {
    List<Choice> choices = new ArrayList<>();
    texts.forEach((value, text) -> choices.add(new Choice(value, text, value.equals(chosen))));
    if (!texts.containsKey(chosen)) {
      choices.add(new Choice(chosen, other.apply(chosen), true));
    }
    return new Field(name, label, choices);
  }
}
