package org.hedgerow.web.query;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.web.problems.ProblemType;

/**
 * The query parameters of one request, read strictly: those that nobody knows, that come twice or
 * that are empty are faults.
 */
public final class Parameters {

  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Faults faults = new Faults();

  /**
   * @param given the values of each parameter, by its name
   * @param known the names there are
   */
  public Parameters(Map<String, List<String>> given, List<String> known) {
    given.forEach((name, values) -> take(name, values, known));
  }

  private void take(String name, List<String> values, List<String> known) {
    if (!known.contains(name)) {
      faults.add(unknown(name, known));
    } else if (values.size() > 1) {
      faults.add(repeated(name));
    } else if (values.isEmpty() || values.get(0).isBlank()) {
      faults.add(Fault.invalid(name, name + " is empty. Give it a value, or leave it out."));
    } else {
      texts.put(name, values.get(0).strip());
    }
  }

  private static Fault unknown(String name, List<String> known) {
    return Fault.unknown(
        ProblemType.UNKNOWN_PARAMETER,
        name.isEmpty() ? "?" : name,
        "There is no parameter %s here.".formatted(Quoted.of(name)),
        Nearest.to(name, known),
        "There are " + String.join(", ", known) + ".");
  }

  private static Fault repeated(String name) {
    return Fault.of(
        ProblemType.REPEATED_PARAMETER, name, name + " comes more than once. Give it only once.");
  }

  /** The value of a parameter, without space around it. */
  public Optional<String> text(String name) {
    return Optional.ofNullable(texts.get(name));
  }

  public boolean has(String name) {
    return texts.containsKey(name);
  }

  /** What was wrong so far; readers add what they find. */
  public Faults faults() {
    return faults;
  }

  /** As a form without scripts sends them: what was left empty isn't there. */
  public static Map<String, List<String>> withoutEmpty(Map<String, List<String>> given) {
    Map<String, List<String>> filled = new LinkedHashMap<>();
    given.forEach(
        (name, values) -> {
          if (!values.stream().allMatch(String::isBlank)) {
            filled.put(name, values);
          }
        });
    return filled;
  }
}
