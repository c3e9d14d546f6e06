package org.hedgerow.web.words;

import static java.util.stream.Collectors.joining;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Meaning;
import org.hedgerow.lexicon.Order;
import org.hedgerow.lexicon.PartOfSpeech;
import org.hedgerow.lexicon.Position;
import org.hedgerow.lexicon.Range;
import org.hedgerow.lexicon.Shape;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.TagFilter;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.web.page.MeaningWords;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.AccentReader;
import org.hedgerow.web.query.ClosestName;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Paging;
import org.hedgerow.web.query.Parameter;
import org.hedgerow.web.query.Parameter.JsonForm;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.ParameterValues;
import org.hedgerow.web.query.PhonogramReader;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.RulesReader;
import org.hedgerow.web.query.SoundNameReader;
import org.hedgerow.web.query.ValidationError;

/**
 * The parameters of lists of words, each defined once, in the order in which queries are written.
 */
public final class WordParameters {

  static final Parameter<Correspondence> PHONOGRAM =
      Parameter.of("phonogram", WordParameters::phonogram, value -> value.grapheme().text())
          .build();

  static final Parameter<Correspondence> VALUE =
      Parameter.of("value", WordParameters::value, WordParameters::number)
          .otherwise(before -> before.find(PHONOGRAM))
          .json(JsonForm.NUMBER)
          .build();

  static final Parameter<List<AccentCatalogue>> ACCENT =
      Parameter.of("accent", WordParameters::accents, WordParameters::tags)
          .otherwise(before -> accents(Optional.empty(), before))
          .json(JsonForm.LIST)
          .build();

  static final Parameter<Sound> SOUND =
      Parameter.of("sound", WordParameters::sound, Sound::ipa).build();

  /** Shapes that teachers ask for, to name one where what they typed is none. */
  private static final List<String> SHAPES =
      List.of("cvc", "vc", "ccvc", "cvcc", "ccvcc", "cv", "vcc", "cccvc", "cvccc");

  static final Parameter<String> SHAPE =
      Parameter.of("shape", WordParameters::shape, shape -> shape)
          .worded(shape -> "shape " + shape)
          .offeredOr("any shape", "Shape", List.of())
          .build();

  static final Parameter<Letters> LETTERS =
      Parameter.of("letters", Letters::read, Letters::toString)
          .worded(ChoiceWords::letters)
          .offeredOr("any number", "Letters", List.of("2", "3", "4", "5", "6", "7-40"))
          .build();

  static final Parameter<Range> SYLLABLES =
      Parameter.range("syllables")
          .worded(range -> ChoiceWords.range(range, "syllable"))
          .offeredOr("any number", "Syllables", List.of("1", "2", "3-9"))
          .build();

  static final Parameter<Position> POSITION =
      Parameter.choice("position", List.of(Position.values()), Position::label)
          .checked(WordParameters::requireTarget)
          .worded(position -> position.equals("middle") ? "in the middle" : "at the " + position)
          .offeredOr("anywhere", "Where it is heard", labels(Position.values(), Position::label))
          .build();

  static final Parameter<RimeFilter> RIME =
      Parameter.of("rime", RimeFilter::read, RimeFilter::word)
          .worded(word -> "ending like " + word)
          .build();

  static final Parameter<Integer> COMMONNESS =
      Parameter.number("commonness", new Range(1, 5), WordQuery.DEFAULT_COMMONNESS)
          .worded(ChoiceWords::commonness)
          .offered("How common", "2", "3", "4", "5", "1")
          .build();

  private static final List<Optional<Status>> STATUSES =
      Stream.concat(
              Stream.of(Optional.<Status>empty()), Arrays.stream(Status.values()).map(Optional::of))
          .toList();

  static final Parameter<Optional<Status>> STATUS =
      Parameter.choice("status", STATUSES, status -> status.map(Status::label).orElse("any"))
          .otherwise(Optional.<Status>empty())
          .worded(status -> status + " words only")
          .build();

  static final Parameter<Integer> PICTURABLE =
      Parameter.number("picturable", new Range(0, TagFilter.MAX_PICTURABLE), 0)
          .worded(ChoiceWords::picturable)
          .offered("Drawing", "0", "2", "3")
          .build();

  static final Parameter<Boolean> PICTURED =
      Parameter.flag("pictured")
          .worded(only -> only.equals("true") ? "only words with a picture" : "with or without")
          .offered("Pictures", "false", "true")
          .build();

  static final Parameter<PartOfSpeech> PART_OF_SPEECH =
      Parameter.choice("part-of-speech", List.of(PartOfSpeech.values()), PartOfSpeech::label)
          .worded(part -> part.equals("function") ? "little words" : part + "s")
          .offeredOr("any", "Kind of word", labels(PartOfSpeech.values(), PartOfSpeech::label))
          .build();

  static final Parameter<Set<Meaning>> MEANING =
      Parameter.choices("meaning", List.of(Meaning.values()), Meaning::label)
          .worded(MeaningWords::of)
          .offeredOr("anything", "About", MeaningWords.OFFERED)
          .build();

  static final Parameter<String> MARK =
      Parameter.choice("mark", List.of("starter"), mark -> mark)
          .worded(mark -> "only the starter set")
          .offeredOr("any word", "Judged for children", List.of("starter"))
          .build();

  static final Parameter<AccentCatalogue> DIFFERS_IN =
      Parameter.of("differs-in", WordParameters::differsIn, WordParameters::tag)
          .worded(accent -> "other in " + accent)
          .build();

  static final Parameter<Set<Inclusion>> INCLUDE =
      Parameter.choices("include", List.of(Inclusion.values()), Inclusion::label)
          .worded(ChoiceWords::included)
          .build();

  static final Parameter<ReadingRules> RULES =
      Parameter.of("rules", WordParameters::rules, ReadingRules::label)
          .otherwise(before -> rules(Optional.empty(), before))
          .worded(rules -> "other reading rules")
          .build();

  public static final Parameter<Taught> TAUGHT =
      Parameter.of("taught", Taught::read, Taught::label)
          .otherwise(Taught.NOTHING)
          .worded(taught -> "taught already: " + taught.replace(",", ", "))
          .json(JsonForm.LIST)
          .build();

  static final Parameter<Order> SORT =
      Parameter.choice("sort", List.of(Order.values()), Order::label)
          .otherwise(Order.DEFAULT)
          .worded(ChoiceWords::order)
          .offered(
              "Order", "default", "spelling", "letters", "commonness", "picturable", "syllables")
          .build();

  static final Parameter<Integer> LIMIT =
      Parameter.of("limit", WordParameters::limit, String::valueOf)
          .otherwise(before -> limit("", before))
          .json(JsonForm.NUMBER)
          .build();

  static final Parameter<String> EDITION =
      Parameter.of(EditionChoice.PARAMETER, (text, before) -> Optional.of(text), text -> text)
          .json(JsonForm.NONE)
          .build();

  /** Each after those that it depends on. */
  static final List<Parameter<?>> ALL =
      List.of(
          PHONOGRAM,
          VALUE,
          ACCENT,
          SOUND,
          SHAPE,
          LETTERS,
          SYLLABLES,
          POSITION,
          RIME,
          COMMONNESS,
          STATUS,
          PICTURABLE,
          PICTURED,
          PART_OF_SPEECH,
          MEANING,
          MARK,
          DIFFERS_IN,
          INCLUDE,
          RULES,
          TAUGHT,
          SORT,
          LIMIT,
          EDITION);

  /** Their names, and that of the place in a list at which an answer begins. */
  static final List<String> NAMES =
      Stream.concat(ALL.stream().map(Parameter::name), Stream.of(ParameterNames.AFTER)).toList();

  private static final Map<String, Parameter<?>> BY_NAME = new LinkedHashMap<>();

  static {
    ALL.forEach(parameter -> BY_NAME.put(parameter.name(), parameter));
  }

  private WordParameters() {}

  /** What a parameter of an address asks for, in a teacher's words. */
  static String words(String name, String text) {
    return Optional.<Parameter<?>>ofNullable(BY_NAME.get(name)).orElseThrow().words(text);
  }

  private static <T> List<String> labels(T[] values, Function<T, String> label) {
    return Arrays.stream(values).map(label).toList();
  }

  private static Optional<Correspondence> phonogram(String text, ParameterValues before) {
    return new PhonogramReader(before.lexicon().catalogue(), before.given().errors())
        .target(Optional.of(text), before.given().text("value"));
  }

  private static Optional<Correspondence> value(String text, ParameterValues before) {
    if (!before.given().has("phonogram")) {
      new PhonogramReader(before.lexicon().catalogue(), before.given().errors())
          .target(Optional.empty(), Optional.of(text));
    }
    return before.find(PHONOGRAM);
  }

  private static String number(Correspondence value) {
    return String.valueOf(value.value().orElseThrow());
  }

  private static Optional<List<AccentCatalogue>> accents(String text, ParameterValues before) {
    return accents(Optional.of(text), before);
  }

  private static Optional<List<AccentCatalogue>> accents(
      Optional<String> text, ParameterValues before) {
    return Optional.of(
        new AccentReader(before.lexicon(), before.given().errors()).list("accent", text));
  }

  private static String tags(List<AccentCatalogue> accents) {
    return accents.stream().map(WordParameters::tag).collect(joining(","));
  }

  private static String tag(AccentCatalogue accent) {
    return accent.accent().tag();
  }

  /** A sound that each of the accents must have. */
  private static Optional<Sound> sound(String text, ParameterValues before) {
    Optional<Sound> sound = Optional.empty();
    for (AccentCatalogue accent : before.get(ACCENT)) {
      sound = new SoundNameReader(accent, before.given().errors()).one("sound", text);
    }
    return sound;
  }

  private static Optional<String> shape(String text, ParameterValues before) {
    String shape = text.toLowerCase(Locale.ROOT);
    if (Pattern.matches(Shape.FORM, shape)) {
      return Optional.of(shape);
    }
    before.given().errors().add(unknownShape(shape));
    return Optional.empty();
  }

  private static ValidationError unknownShape(String shape) {
    return ValidationError.unknown(
        ProblemType.UNKNOWN_SHAPE,
        "shape",
        "There is no shape %s. Write c for each consonant and v for each vowel, 8 at most."
            .formatted(Quoted.of(shape)),
        ClosestName.to(shape, SHAPES),
        "For cat that is cvc.");
  }

  private static void requireTarget(ParameterValues before) {
    if (!before.given().has("phonogram") && !before.given().has("sound")) {
      before
          .given()
          .errors()
          .invalid(
              "position",
              "position needs a phonogram or a sound. Say which one, or leave position out.");
    }
  }

  /** An accent other than those in which the words must pass. */
  private static Optional<AccentCatalogue> differsIn(String text, ParameterValues before) {
    if (before.get(ACCENT).stream().anyMatch(accent -> tag(accent).equalsIgnoreCase(text))) {
      before
          .given()
          .errors()
          .invalid(
              "differs-in",
              "differs-in must be another accent than those in which the words must pass."
                  + " Name another, or leave it out.");
      return Optional.empty();
    }
    return Optional.of(
        new AccentReader(before.lexicon(), before.given().errors())
            .one("differs-in", Optional.of(text)));
  }

  private static Optional<ReadingRules> rules(String text, ParameterValues before) {
    return rules(Optional.of(text), before);
  }

  private static Optional<ReadingRules> rules(Optional<String> text, ParameterValues before) {
    return Optional.of(
        new RulesReader(before.lexicon().plans().rules(), before.given().errors())
            .read("rules", text));
  }

  /** How many words there may be depends on the format of the answer. */
  private static Optional<Integer> limit(String text, ParameterValues before) {
    return Optional.of(Paging.limit(before.given()));
  }
}
