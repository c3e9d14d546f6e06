package org.hedgerow.web.query;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.problems.ProblemType;

/** Reads phonograms and the numbers of their values. */
public final class PhonogramReader {

  private static final Pattern LETTERS = Pattern.compile("[a-z_-]{1,10}");
  private static final Pattern NUMBER = Pattern.compile("0|[1-9][0-9]{0,5}");
  private static final Pattern WITH_NUMBER = Pattern.compile("(.*?)([0-9]{0,6})");
  private static final String FIRST = "1";

  private final Catalogue catalogue;
  private final ValidationErrors errors;

  public PhonogramReader(Catalogue catalogue, ValidationErrors errors) {
    this.catalogue = catalogue;
    this.errors = errors;
  }

  /**
   * The value of a phonogram; empty if none is asked for, or if something was wrong.
   *
   * @param value its number, the first if it isn't given
   */
  public Optional<Correspondence> target(Optional<String> phonogram, Optional<String> value) {
    if (phonogram.isEmpty()) {
      value.ifPresent(number -> valueOfNothing());
      return Optional.empty();
    }
    return values("phonogram", folded(phonogram.get()))
        .flatMap(values -> numbered("value", values, value.orElse(FIRST)));
  }

  private void valueOfNothing() {
    errors.invalid("value", "value needs a phonogram. Say which one, or leave value out.");
  }

  /**
   * A phonogram that children know already, {@code sh} with all its values or {@code oo2} with one;
   * empty if something was wrong.
   */
  public List<Correspondence> taught(String parameter, String text) {
    Matcher parts = WITH_NUMBER.matcher(folded(text));
    if (!parts.matches()) {
      return values(parameter, folded(text)).orElse(List.of());
    }
    List<Correspondence> values = values(parameter, parts.group(1)).orElse(List.of());
    if (values.isEmpty() || parts.group(2).isEmpty()) {
      return values;
    }
    return numbered(parameter, values, parts.group(2)).stream().toList();
  }

  private static String folded(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  private Optional<List<Correspondence>> values(String parameter, String grapheme) {
    List<Correspondence> values = catalogue.values(grapheme);
    if (values.isEmpty()) {
      errors.add(unknown(parameter, grapheme));
      return Optional.empty();
    }
    return Optional.of(values);
  }

  private ValidationError unknown(String parameter, String grapheme) {
    return ValidationError.unknown(
        ProblemType.UNKNOWN_PHONOGRAM,
        parameter,
        "There is no phonogram %s.".formatted(Quoted.of(grapheme)),
        Optional.of(grapheme)
            .filter(text -> LETTERS.matcher(text).matches())
            .flatMap(text -> ClosestName.closest(text, catalogue.phonograms())),
        "Phonograms are letters that spell one sound, such as oa, igh or i-e.");
  }

  private Optional<Correspondence> numbered(
      String parameter, List<Correspondence> values, String number) {
    if (!NUMBER.matcher(number).matches()) {
      errors.invalid(
          parameter,
          "%s is no number of a value. %s".formatted(Quoted.of(number), numbers(values)));
      return Optional.empty();
    }
    int index = Integer.parseInt(number) - 1;
    if (index < 0 || index >= values.size()) {
      errors.add(unknownValue(parameter, values, index));
      return Optional.empty();
    }
    return Optional.of(values.get(index));
  }

  private static ValidationError unknownValue(
      String parameter, List<Correspondence> values, int index) {
    String message =
        "%s has no value %d. %s".formatted(values.get(0).grapheme(), index + 1, numbers(values));
    String nearest = index < 0 ? FIRST : String.valueOf(values.size());
    return new ValidationError(ProblemType.UNKNOWN_VALUE, parameter, message, Optional.of(nearest));
  }

  /** {@code It has 1 (moon), 2 (wool).} */
  private static String numbers(List<Correspondence> values) {
    String each =
        values.stream()
            .map(value -> "%d (%s)".formatted(value.value().orElseThrow(), value.keyWord()))
            .collect(joining(", "));
    return "It has %s.".formatted(each);
  }
}
