package org.hedgerow.web.query;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.web.problems.ProblemType;

/**
 * The query parameters of one request, read strictly: those that nobody knows, that come twice or
 * that are empty are errors. What is a list may come several times, which is the same as once with
 * commas.
 */
public final class Parameters {

  private static final Set<String> LISTS =
      Set.of(
          ParameterNames.ACCENT,
          ParameterNames.MEANING,
          ParameterNames.INCLUDE,
          ParameterNames.RULES,
          ParameterNames.TAUGHT,
          "state");

  private final Map<String, String> texts = new LinkedHashMap<>();
  private final ValidationErrors errors = ValidationErrors.ofQuery();
  private boolean forTable;

  /**
   * @param given the values of each parameter, by its name
   * @param known the names there are
   */
  public Parameters(Map<String, List<String>> given, List<String> known) {
    given.forEach((name, values) -> take(name, values, known));
  }

  /**
   * @param query as it stands in the address, encoded; or an empty text
   */
  public static Parameters parsed(String query, List<String> known) {
    Map<String, List<String>> given = new LinkedHashMap<>();
    try {
      for (String pair : query.split("&", -1)) {
        if (!pair.isEmpty()) {
          String[] parts = pair.split("=", 2);
          given
              .computeIfAbsent(decoded(parts[0]), name -> new ArrayList<>())
              .add(parts.length == 1 ? "" : decoded(parts[1]));
        }
      }
    } catch (IllegalArgumentException malformed) {
      return unreadable(known);
    }
    return new Parameters(given, known);
  }

  private static String decoded(String text) {
    return URLDecoder.decode(text, StandardCharsets.UTF_8);
  }

  private static Parameters unreadable(List<String> known) {
    Parameters parameters = new Parameters(Map.of(), known);
    parameters
        .errors()
        .invalid("%", "The address has a % without two hexadecimal digits after it. Write %25.");
    return parameters;
  }

  private void take(String name, List<String> values, List<String> known) {
    if (!known.contains(name)) {
      errors.add(unknown(name, known));
    } else if (values.size() > 1 && !LISTS.contains(name)) {
      errors.add(repeated(name));
    } else if (values.isEmpty() || values.stream().anyMatch(String::isBlank)) {
      errors.invalid(name, name + " is empty. Give it a value, or leave it out.");
    } else {
      texts.put(name, String.join(",", values).strip());
    }
  }

  private static ValidationError unknown(String name, List<String> known) {
    return ValidationError.unknown(
        ProblemType.UNKNOWN_PARAMETER,
        name.isEmpty() ? "?" : name,
        "There is no parameter %s here.".formatted(Quoted.of(name)),
        ClosestName.to(name, known),
        "There are " + String.join(", ", known) + ".");
  }

  private static ValidationError repeated(String name) {
    return ValidationError.of(
        ProblemType.REPEATED_PARAMETER, name, name + " comes more than once. Give it only once.");
  }

  /** The value of a parameter, without space around it. */
  public Optional<String> text(String name) {
    return Optional.ofNullable(texts.get(name));
  }

  /** Says that the answer is a table, which isn't read in parts. */
  public void answerIsTable() {
    forTable = true;
  }

  boolean isForTable() {
    return forTable;
  }

  public boolean has(String name) {
    return texts.containsKey(name);
  }

  /** What was wrong so far; readers add what they find. */
  public ValidationErrors errors() {
    return errors;
  }

  /**
   * As pages are asked for: what a form left empty isn't there, and names that nobody knows are
   * passed over, for other sites add theirs to links ({@code utm_source}, {@code fbclid}).
   */
  public static Parameters ofPage(Map<String, List<String>> given, List<String> known) {
    Map<String, List<String>> kept = withoutEmpty(given);
    kept.keySet().retainAll(known);
    return new Parameters(kept, known);
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
