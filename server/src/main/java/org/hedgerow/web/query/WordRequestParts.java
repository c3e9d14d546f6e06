package org.hedgerow.web.query;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Order;
import org.hedgerow.lexicon.Position;
import org.hedgerow.lexicon.Range;
import org.hedgerow.lexicon.Shape;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Standard;
import org.hedgerow.web.problems.ProblemType;

/** Reads the parts of one question, and notes each as it was understood. */
final class WordRequestParts {

  private static final Range COMMONNESS = new Range(1, 5);
  private static final Range LIMIT = new Range(1, 500);
  private static final int DEFAULT_LIMIT = 50;
  private static final Pattern SHAPE = Pattern.compile(Shape.FORM);
  private static final Pattern LETTERS = Pattern.compile("[a-z]{1,26}");
  private static final String ANY = "any";

  /** Shapes that teachers ask for, to name one where what they typed is none. */
  private static final List<String> SHAPES =
      List.of("cvc", "vc", "ccvc", "cvcc", "ccvcc", "cv", "vcc", "cccvc", "cvccc");

  private final Lexicon lexicon;
  private final Parameters parameters;
  private final ChoiceReader choices;
  private final Map<String, String> resolved = new LinkedHashMap<>();

  WordRequestParts(Lexicon lexicon, Parameters parameters) {
    this.lexicon = lexicon;
    this.parameters = parameters;
    this.choices = new ChoiceReader(parameters);
  }

  /** The question for the start of the list; worth nothing if there are faults. */
  WordRequest request() {
    Optional<Correspondence> phonogram = phonogram();
    List<AccentCatalogue> accents = accents();
    Optional<Sound> sound = sound(accents);
    Standard standard = new Standard(rules(), targets(phonogram, sound, accents), taught());
    return new WordRequest(
        lexicon.edition(), phonogram, sound, query(accents, standard), limit(), 0, inOrder());
  }

  private WordQuery query(List<AccentCatalogue> accents, Standard standard) {
    return new WordQuery(
        accents.stream().map(each -> each.accent().tag()).toList(),
        standard,
        shape(),
        letterCount(),
        onlyLetters(),
        syllables(),
        position(),
        commonness(),
        status(),
        include(),
        order());
  }

  private QueryString inOrder() {
    Map<String, String> ordered = new LinkedHashMap<>();
    WordQueryReader.PARAMETERS.forEach(
        name -> {
          String value = resolved.getOrDefault(name, "");
          if (!value.isEmpty()) {
            ordered.put(name, value);
          }
        });
    return new QueryString(ordered);
  }

  private <T> Optional<T> note(String name, Optional<T> value, Function<T, String> label) {
    value.ifPresent(found -> resolved.put(name, label.apply(found)));
    return value;
  }

  private Optional<Correspondence> phonogram() {
    Optional<Correspondence> found =
        new PhonogramReader(lexicon.catalogue(), parameters.faults())
            .target(
                parameters.text(WordQueryReader.PHONOGRAM), parameters.text(WordQueryReader.VALUE));
    note(WordQueryReader.PHONOGRAM, found, each -> each.grapheme().text());
    return note(WordQueryReader.VALUE, found, each -> String.valueOf(each.value().orElseThrow()));
  }

  private List<AccentCatalogue> accents() {
    List<AccentCatalogue> accents =
        new AccentReader(lexicon, parameters.faults())
            .list(WordQueryReader.ACCENT, parameters.text(WordQueryReader.ACCENT));
    String tags = accents.stream().map(each -> each.accent().tag()).collect(joining(","));
    resolved.put(WordQueryReader.ACCENT, tags);
    return accents;
  }

  /** A sound that each of the accents must have. */
  private Optional<Sound> sound(List<AccentCatalogue> accents) {
    Optional<String> name = parameters.text(WordQueryReader.SOUND);
    Optional<Sound> sound = Optional.empty();
    for (AccentCatalogue accent : accents) {
      sound =
          name.flatMap(
              text ->
                  new SoundNameReader(accent, parameters.faults())
                      .one(WordQueryReader.SOUND, text));
    }
    return note(WordQueryReader.SOUND, sound, Sound::ipa);
  }

  /** Without a phonogram, a list for a sound is one for all of its spellings. */
  private static Set<Correspondence> targets(
      Optional<Correspondence> phonogram, Optional<Sound> sound, List<AccentCatalogue> accents) {
    if (phonogram.isPresent() || sound.isEmpty()) {
      return phonogram.map(Set::of).orElse(Set.of());
    }
    List<Sound> alone = List.of(sound.get());
    return accents.stream()
        .flatMap(accent -> accent.realisations().stream())
        .filter(realisation -> realisation.sounds().equals(alone))
        .map(Realisation::correspondence)
        .collect(toUnmodifiableSet());
  }

  private Optional<String> shape() {
    Optional<String> shape = small(WordQueryReader.SHAPE);
    Optional<String> known = shape.filter(text -> SHAPE.matcher(text).matches());
    if (known.isEmpty()) {
      shape.map(WordRequestParts::unknownShape).ifPresent(parameters.faults()::add);
    }
    return note(WordQueryReader.SHAPE, known, text -> text);
  }

  private static Fault unknownShape(String shape) {
    return Fault.unknown(
        ProblemType.UNKNOWN_SHAPE,
        WordQueryReader.SHAPE,
        "There is no shape %s. Write c for each consonant and v for each vowel, 8 at most."
            .formatted(Quoted.of(shape)),
        Nearest.to(shape, SHAPES),
        "For cat that is cvc.");
  }

  private Optional<Range> letterCount() {
    Optional<Range> range =
        small(WordQueryReader.LETTERS)
            .filter(ChoiceReader::looksLikeRange)
            .flatMap(text -> choices.range(WordQueryReader.LETTERS, text));
    return note(WordQueryReader.LETTERS, range, Range::toString);
  }

  private Optional<String> onlyLetters() {
    Optional<String> text =
        small(WordQueryReader.LETTERS).filter(each -> !ChoiceReader.looksLikeRange(each));
    Optional<String> letters = text.filter(each -> LETTERS.matcher(each).matches());
    if (letters.isEmpty()) {
      text.map(WordRequestParts::invalidLetters).ifPresent(parameters.faults()::add);
    }
    return note(WordQueryReader.LETTERS, letters, each -> each);
  }

  private static Fault invalidLetters(String text) {
    return Fault.invalid(
        WordQueryReader.LETTERS,
        "letters must be how many (3 or 3-5) or which (satpin, up to 26 of a to z), not %s."
            .formatted(Quoted.of(text)));
  }

  private Optional<Range> syllables() {
    Optional<Range> range =
        parameters
            .text(WordQueryReader.SYLLABLES)
            .flatMap(text -> choices.range(WordQueryReader.SYLLABLES, text));
    return note(WordQueryReader.SYLLABLES, range, Range::toString);
  }

  private Optional<Position> position() {
    if (parameters.has(WordQueryReader.POSITION)
        && !parameters.has(WordQueryReader.PHONOGRAM)
        && !parameters.has(WordQueryReader.SOUND)) {
      parameters.faults().add(positionOfNothing());
    }
    List<String> labels = Arrays.stream(Position.values()).map(Position::label).toList();
    Optional<Position> position =
        choices.name(WordQueryReader.POSITION, labels, Position::labelled);
    return note(WordQueryReader.POSITION, position, Position::label);
  }

  private static Fault positionOfNothing() {
    return Fault.invalid(
        WordQueryReader.POSITION,
        "position needs a phonogram or a sound. Say which one, or leave position out.");
  }

  private int commonness() {
    return number(WordQueryReader.COMMONNESS, COMMONNESS, WordQuery.DEFAULT_COMMONNESS);
  }

  private int limit() {
    return number(WordQueryReader.LIMIT, LIMIT, DEFAULT_LIMIT);
  }

  private int number(String name, Range allowed, int otherwise) {
    int number = choices.number(name, allowed, otherwise);
    resolved.put(name, String.valueOf(number));
    return number;
  }

  private Optional<Status> status() {
    List<String> labels =
        Stream.concat(Stream.of(ANY), Arrays.stream(Status.values()).map(Status::label)).toList();
    Optional<String> label = choices.name(WordQueryReader.STATUS, labels, Optional::of);
    resolved.put(WordQueryReader.STATUS, label.orElse(ANY));
    return label.flatMap(Status::labelled);
  }

  private Set<String> include() {
    EnumSet<Inclusion> include = EnumSet.noneOf(Inclusion.class);
    parameters
        .text(WordQueryReader.INCLUDE)
        .ifPresent(text -> Arrays.stream(text.split(",", -1)).forEach(name -> add(name, include)));
    resolved.put(
        WordQueryReader.INCLUDE, include.stream().map(Inclusion::label).collect(joining(",")));
    return include.stream().map(Inclusion::tag).collect(toUnmodifiableSet());
  }

  private void add(String name, Set<Inclusion> include) {
    choices
        .name(WordQueryReader.INCLUDE, name, Inclusion.LABELS, Inclusion::labelled)
        .ifPresent(include::add);
  }

  private ReadingRules rules() {
    ReadingRules rules =
        new RulesReader(parameters.faults())
            .read(WordQueryReader.RULES, parameters.text(WordQueryReader.RULES));
    resolved.put(WordQueryReader.RULES, rules.label());
    return rules;
  }

  private Set<Correspondence> taught() {
    TaughtReader reader = new TaughtReader(lexicon.catalogue(), parameters.faults());
    Set<Correspondence> taught =
        reader.read(WordQueryReader.TAUGHT, parameters.text(WordQueryReader.TAUGHT));
    resolved.put(WordQueryReader.TAUGHT, String.join(",", reader.labels(taught)));
    return taught;
  }

  private Order order() {
    List<String> labels = Arrays.stream(Order.values()).map(Order::label).toList();
    Order order = choices.name(WordQueryReader.SORT, labels, Order::labelled).orElse(Order.DEFAULT);
    resolved.put(WordQueryReader.SORT, order.label());
    return order;
  }

  private Optional<String> small(String name) {
    return parameters.text(name).map(text -> text.toLowerCase(Locale.ROOT));
  }
}
