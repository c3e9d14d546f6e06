package org.hedgerow.web.sentences;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Standard;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.web.page.AccentQuestion;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.TaughtValues;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.QueryString;
import org.hedgerow.web.query.SightWordsReader;
import org.hedgerow.web.query.TaughtReader;

/**
 * What the pages about sentences are asked.
 *
 * @param value the phonogram value, if any
 * @param taught what was taught, as it was typed
 * @param sight the words taught whole; empty for none
 * @param longest how many words are not too many
 */
record SentenceQuestion(
    Parameters parameters,
    Lexicon lexicon,
    ChosenAccents accents,
    Optional<Correspondence> value,
    String taught,
    Standard standard,
    Optional<SightWords> sight,
    int longest) {

  static final String TAUGHT = "taught";
  static final String SIGHT_WORDS = "sight-words";
  static final String KEEP = "keep";
  static final String MAX_LENGTH = "longest";

  private static final int MIN_WORDS = 3;
  private static final int MAX_WORDS = 40;

  /**
   * @param others names of the page's own parameters
   * @throws org.hedgerow.web.query.InvalidQueryException if a parameter is wrong
   */
  static SentenceQuestion read(Context context, Editions editions, List<String> others) {
    List<String> names =
        new ArrayList<>(
            List.of(
                ParameterNames.FOR,
                TAUGHT,
                SIGHT_WORDS,
                MAX_LENGTH,
                ChosenAccents.PARAMETER,
                EditionChoice.PARAMETER));
    names.addAll(others);
    Parameters parameters = Parameters.ofPage(sent(context), names);
    parameters.errors().throwIfAny();
    Lexicon lexicon = EditionChoice.of(editions, parameters);
    ChosenAccents accents = AccentQuestion.accents(lexicon, parameters, ChosenAccents.PARAMETER);
    Optional<Correspondence> value = value(lexicon, parameters);
    Set<Correspondence> known =
        new TaughtReader(lexicon, accents.first().tag(), parameters.errors())
            .read(TAUGHT, parameters.text(TAUGHT));
    int longest =
        number(parameters, MAX_LENGTH, SentenceStandard.DEFAULT_WORDS, MIN_WORDS, MAX_WORDS);
    Optional<SightWords> sight =
        new SightWordsReader(lexicon.plans().sightWords(), parameters.errors())
            .chosen(SIGHT_WORDS, parameters.text(SIGHT_WORDS));
    parameters.errors().throwIfAny();
    return new SentenceQuestion(
        parameters,
        lexicon,
        accents,
        value,
        parameters.text(TAUGHT).orElse(""),
        new Standard(ReadingRules.DEFAULT, value.map(Set::of).orElse(Set.of()), known),
        sight,
        longest);
  }

  /** Accents are boxes to tick, of which each sends itself; what was kept is read apart. */
  private static Map<String, List<String>> sent(Context context) {
    Map<String, List<String>> given =
        new LinkedHashMap<>(Parameters.withoutEmpty(context.queryParamMap()));
    given.remove(KEEP);
    given.computeIfPresent(
        ChosenAccents.PARAMETER, (name, tags) -> List.of(String.join(",", tags)));
    return given;
  }

  private static Optional<Correspondence> value(Lexicon lexicon, Parameters parameters) {
    Optional<String> label = parameters.text(ParameterNames.FOR);
    Optional<Correspondence> value = label.flatMap(text -> TaughtValues.labelled(lexicon, text));
    if (label.isPresent() && value.isEmpty()) {
      parameters
          .errors()
          .invalid(
              ParameterNames.FOR,
              "There is no such value. Choose one from the list, such as “oa 1”.");
    }
    return value;
  }

  static int number(Parameters parameters, String name, int usual, int least, int most) {
    Optional<String> text = parameters.text(name);
    if (text.isEmpty()) {
      return usual;
    }
    int number = text.get().matches("[0-9]{1,6}") ? Integer.parseInt(text.get()) : -1;
    if (number < least || number > most) {
      parameters
          .errors()
          .invalid(name, "%s must be a number from %d to %d.".formatted(name, least, most));
      return usual;
    }
    return number;
  }

  SentenceStandard sentenceStandard() {
    return new SentenceStandard(
        standard, accents.tags(), sightWords(), SentenceStandard.DEFAULT_TARGETS, longest);
  }

  /** The words taught whole. */
  Set<String> sightWords() {
    return sight.map(SightWords::asSet).orElse(Set.of());
  }

  private List<Choice> sightChoices() {
    List<Choice> choices = new ArrayList<>();
    lexicon
        .plans()
        .sightWords()
        .all()
        .forEach(
            set ->
                choices.add(
                    new Choice(set.name(), set.title(), sight.filter(set::equals).isPresent())));
    choices.add(new Choice(SightWordSets.NO_WORDS, "No sight words", sight.isEmpty()));
    return choices;
  }

  private List<Choice> valueChoices() {
    List<Choice> choices = new ArrayList<>();
    choices.add(new Choice("", "No phonogram", value.isEmpty()));
    for (Correspondence each : TaughtValues.of(lexicon)) {
      boolean chosen = value.filter(each::equals).isPresent();
      choices.add(new Choice(each.label(), TaughtValues.words(each), chosen));
    }
    return choices;
  }

  /** The same question, put to a page in the newest edition. */
  String addressNow(String path) {
    return path + asked().map(query -> "?" + query).orElse("");
  }

  /** The same question about a text. */
  String addressOf(String text) {
    Map<String, String> whole = new LinkedHashMap<>();
    whole.put("text", text);
    whole.putAll(given());
    return "/sentences/check?" + new QueryString(whole);
  }

  /** What all these pages are asked, as it stands in addresses; empty where all is as usual. */
  private Optional<QueryString> asked() {
    return given().isEmpty() ? Optional.empty() : Optional.of(new QueryString(given()));
  }

  private Map<String, String> given() {
    Map<String, String> given = new LinkedHashMap<>();
    for (String name :
        List.of(ParameterNames.FOR, MAX_LENGTH, TAUGHT, SIGHT_WORDS, ChosenAccents.PARAMETER)) {
      parameters.text(name).ifPresent(text -> given.put(name, text));
    }
    return given;
  }

  /** The fields that all these pages have. */
  SentenceFields fields() {
    return new SentenceFields(
        valueChoices(),
        accents.choices(),
        sightChoices(),
        taught,
        longest,
        parameters.text(EditionChoice.PARAMETER),
        asked().map(query -> "?" + query).orElse(""));
  }
}
