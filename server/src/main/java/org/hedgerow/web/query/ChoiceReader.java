package org.hedgerow.web.query;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.lexicon.Range;

/** Reads parameters that have a few names, or numbers, to choose from. */
public final class ChoiceReader {

  private static final Pattern NUMBER = Pattern.compile("0|[1-9][0-9]{0,5}");
  private static final Pattern RANGE = Pattern.compile("([1-9][0-9]?)(?:-([1-9][0-9]?))?");

  private final Parameters parameters;

  public ChoiceReader(Parameters parameters) {
    this.parameters = parameters;
  }

  /** What the value of a parameter stands for; empty if it isn't given, or is wrong. */
  public <T> Optional<T> name(
      String parameter, List<String> names, Function<String, Optional<T>> find) {
    return parameters.text(parameter).flatMap(text -> name(parameter, text, names, find));
  }

  public <T> Optional<T> name(
      String parameter, String text, List<String> names, Function<String, Optional<T>> find) {
    Optional<T> found = Optional.of(text.strip()).filter(names::contains).flatMap(find);
    if (found.isEmpty()) {
      unknown(parameter, text, names);
    }
    return found;
  }

  private void unknown(String parameter, String text, List<String> names) {
    String message =
        "%s can't be %s. Choose from %s."
            .formatted(parameter, Quoted.of(text), String.join(", ", names));
    Optional<String> nearest = ClosestName.to(text.toLowerCase(Locale.ROOT), names);
    parameters.errors().invalid(parameter, message, nearest);
  }

  /** A whole number; the default if it isn't given, or is wrong. */
  public int number(String parameter, Range allowed, int otherwise) {
    return parameters
        .text(parameter)
        .flatMap(text -> number(parameter, text, allowed))
        .orElse(otherwise);
  }

  private Optional<Integer> number(String parameter, String text, Range allowed) {
    Optional<Integer> number =
        Optional.of(text)
            .filter(digits -> NUMBER.matcher(digits).matches())
            .map(Integer::valueOf)
            .filter(allowed::contains);
    if (number.isEmpty()) {
      String message =
          "%s must be a whole number from %d to %d, not %s."
              .formatted(parameter, allowed.least(), allowed.most(), Quoted.of(text));
      parameters.errors().invalid(parameter, message);
    }
    return number;
  }

  /** Whether a text is meant for a number or a range of numbers. */
  public static boolean looksLikeRange(String text) {
    return !text.isEmpty() && Character.isDigit(text.charAt(0));
  }

  /** A number from 1 to 99, or two with a hyphen between. */
  public Optional<Range> range(String parameter, String text) {
    Matcher parts = RANGE.matcher(text);
    Optional<Range> range = parts.matches() ? range(parts) : Optional.empty();
    if (range.isEmpty()) {
      String message =
          "%s must be a number such as 3, or the least and the most such as 3-5, not %s."
              .formatted(parameter, Quoted.of(text));
      parameters.errors().invalid(parameter, message);
    }
    return range;
  }

  private static Optional<Range> range(Matcher parts) {
    int least = Integer.parseInt(parts.group(1));
    int most = parts.group(2) == null ? least : Integer.parseInt(parts.group(2));
    return least > most ? Optional.empty() : Optional.of(new Range(least, most));
  }
}
