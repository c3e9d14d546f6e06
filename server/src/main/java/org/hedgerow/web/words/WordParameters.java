package org.hedgerow.web.words;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Meaning;
import org.hedgerow.lexicon.Order;
import org.hedgerow.lexicon.PartOfSpeech;
import org.hedgerow.lexicon.Position;
import org.hedgerow.lexicon.Range;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.TagFilter;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.web.page.MeaningWords;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Parameter;
import org.hedgerow.web.query.Parameter.JsonForm;
import org.hedgerow.web.query.ParameterNames;

/**
 * The parameters of lists of words, each defined once, in the order in which queries are written.
 */
public final class WordParameters {

  static final Parameter<Correspondence> PHONOGRAM =
      Parameter.of("phonogram", WordReaders::phonogram, value -> value.grapheme().text()).build();

  static final Parameter<Correspondence> VALUE =
      Parameter.of("value", WordReaders::value, WordReaders::number)
          .otherwise(before -> before.find(PHONOGRAM))
          .json(JsonForm.NUMBER)
          .build();

  static final Parameter<List<AccentCatalogue>> ACCENT =
      Parameter.of("accent", WordReaders::accents, WordReaders::tags)
          .otherwise(before -> WordReaders.accents(Optional.empty(), before))
          .json(JsonForm.LIST)
          .build();

  static final Parameter<Sound> SOUND =
      Parameter.of("sound", WordReaders::sound, Sound::ipa).build();

  static final Parameter<String> SHAPE =
      Parameter.of("shape", WordReaders::shape, shape -> shape)
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
          .checked(WordReaders::requireTarget)
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
      Parameter.of("differs-in", WordReaders::differsIn, WordReaders::tag)
          .worded(accent -> "other in " + accent)
          .build();

  static final Parameter<Set<Inclusion>> INCLUDE =
      Parameter.choices("include", List.of(Inclusion.values()), Inclusion::label)
          .worded(ChoiceWords::included)
          .build();

  static final Parameter<ReadingRules> RULES =
      Parameter.of("rules", WordReaders::rules, ReadingRules::label)
          .otherwise(before -> WordReaders.rules(Optional.empty(), before))
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
      Parameter.of("limit", WordReaders::limit, String::valueOf)
          .otherwise(before -> WordReaders.limit("", before))
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

  private WordParameters() {}

  /** What a parameter of an address asks for, in a teacher's words. */
  static String words(String name, String text) {
    return ALL.stream()
        .filter(parameter -> parameter.name().equals(name))
        .findFirst()
        .orElseThrow()
        .words(text);
  }

  private static <T> List<String> labels(T[] values, Function<T, String> label) {
    return Arrays.stream(values).map(label).toList();
  }
}
