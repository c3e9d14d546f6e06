package org.hedgerow.web.words;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Order;
import org.hedgerow.lexicon.Position;
import org.hedgerow.lexicon.Range;
import org.hedgerow.lexicon.Shape;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.reading.Standard;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.ChoiceReader;
import org.hedgerow.web.query.Fault;
import org.hedgerow.web.query.Nearest;
import org.hedgerow.web.query.Paging;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.Quoted;

/** Reads by what a list is narrowed, widened and sorted. */
final class FilterReader {

  private static final Range COMMONNESS = new Range(1, 5);
  private static final Pattern SHAPE = Pattern.compile(Shape.FORM);
  private static final Pattern LETTERS = Pattern.compile("[a-z]{1,26}");
  private static final String ANY = "any";

  /** Shapes that teachers ask for, to name one where what they typed is none. */
  private static final List<String> SHAPES =
      List.of("cvc", "vc", "ccvc", "cvcc", "ccvcc", "cv", "vcc", "cccvc", "cvccc");

  private final Parameters parameters;
  private final ChoiceReader choices;
  private final Resolved resolved;

  FilterReader(Parameters parameters, Resolved resolved) {
    this.parameters = parameters;
    this.choices = new ChoiceReader(parameters);
    this.resolved = resolved;
  }

  WordQuery query(List<String> accents, Standard standard, Optional<String> differsIn) {
    return new WordQuery(
        accents,
        standard,
        shape(),
        letterCount(),
        onlyLetters(),
        syllables(),
        position(),
        commonness(),
        status(),
        new TagFilterReader(parameters, resolved).filter(),
        differsIn,
        include(),
        order());
  }

  private Optional<String> shape() {
    Optional<String> shape = small(ParameterNames.SHAPE);
    Optional<String> known = shape.filter(text -> SHAPE.matcher(text).matches());
    if (known.isEmpty()) {
      shape.map(FilterReader::unknownShape).ifPresent(parameters.faults()::add);
    }
    return resolved.note(ParameterNames.SHAPE, known, text -> text);
  }

  private static Fault unknownShape(String shape) {
    return Fault.unknown(
        ProblemType.UNKNOWN_SHAPE,
        ParameterNames.SHAPE,
        "There is no shape %s. Write c for each consonant and v for each vowel, 8 at most."
            .formatted(Quoted.of(shape)),
        Nearest.to(shape, SHAPES),
        "For cat that is cvc.");
  }

  private Optional<Range> letterCount() {
    Optional<Range> range =
        small(ParameterNames.LETTERS)
            .filter(ChoiceReader::looksLikeRange)
            .flatMap(text -> choices.range(ParameterNames.LETTERS, text));
    return resolved.note(ParameterNames.LETTERS, range, Range::toString);
  }

  private Optional<String> onlyLetters() {
    Optional<String> text =
        small(ParameterNames.LETTERS).filter(each -> !ChoiceReader.looksLikeRange(each));
    Optional<String> letters = text.filter(each -> LETTERS.matcher(each).matches());
    if (letters.isEmpty()) {
      text.ifPresent(this::invalidLetters);
    }
    return resolved.note(ParameterNames.LETTERS, letters, each -> each);
  }

  private void invalidLetters(String text) {
    parameters
        .faults()
        .invalid(
            ParameterNames.LETTERS,
            "letters must be how many (3 or 3-5) or which (satpin, up to 26 of a to z), not %s."
                .formatted(Quoted.of(text)));
  }

  private Optional<Range> syllables() {
    Optional<Range> range =
        parameters
            .text(ParameterNames.SYLLABLES)
            .flatMap(text -> choices.range(ParameterNames.SYLLABLES, text));
    return resolved.note(ParameterNames.SYLLABLES, range, Range::toString);
  }

  private Optional<Position> position() {
    if (parameters.has(ParameterNames.POSITION)
        && !parameters.has(ParameterNames.PHONOGRAM)
        && !parameters.has(ParameterNames.SOUND)) {
      positionOfNothing();
    }
    List<String> labels = Arrays.stream(Position.values()).map(Position::label).toList();
    Optional<Position> position = choices.name(ParameterNames.POSITION, labels, Position::labelled);
    return resolved.note(ParameterNames.POSITION, position, Position::label);
  }

  private void positionOfNothing() {
    parameters
        .faults()
        .invalid(
            ParameterNames.POSITION,
            "position needs a phonogram or a sound. Say which one, or leave position out.");
  }

  private int commonness() {
    return number(ParameterNames.COMMONNESS, COMMONNESS, WordQuery.DEFAULT_COMMONNESS);
  }

  int limit() {
    int limit = Paging.limit(parameters);
    resolved.note(ParameterNames.LIMIT, String.valueOf(limit));
    return limit;
  }

  private int number(String name, Range allowed, int otherwise) {
    int number = choices.number(name, allowed, otherwise);
    resolved.note(name, String.valueOf(number));
    return number;
  }

  private Optional<Status> status() {
    List<String> labels =
        Stream.concat(Stream.of(ANY), Arrays.stream(Status.values()).map(Status::label)).toList();
    Optional<String> label = choices.name(ParameterNames.STATUS, labels, Optional::of);
    resolved.note(ParameterNames.STATUS, label.orElse(ANY));
    return label.flatMap(Status::labelled);
  }

  private Set<String> include() {
    EnumSet<Inclusion> include = EnumSet.noneOf(Inclusion.class);
    parameters
        .text(ParameterNames.INCLUDE)
        .ifPresent(text -> Arrays.stream(text.split(",", -1)).forEach(name -> add(name, include)));
    resolved.note(
        ParameterNames.INCLUDE, include.stream().map(Inclusion::label).collect(joining(",")));
    return include.stream().map(Inclusion::tag).collect(toUnmodifiableSet());
  }

  private void add(String name, Set<Inclusion> include) {
    choices
        .name(ParameterNames.INCLUDE, name, Inclusion.LABELS, Inclusion::labelled)
        .ifPresent(include::add);
  }

  private Order order() {
    List<String> labels = Arrays.stream(Order.values()).map(Order::label).toList();
    Order order = choices.name(ParameterNames.SORT, labels, Order::labelled).orElse(Order.DEFAULT);
    resolved.note(ParameterNames.SORT, order.label());
    return order;
  }

  private Optional<String> small(String name) {
    return parameters.text(name).map(text -> text.toLowerCase(Locale.ROOT));
  }
}
