package org.hedgerow.sentences.compose;

import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hedgerow.sentences.compose.NounForm.Form;

/**
 * All that can be read in sentences for one phonogram value, laid out for the composer: which nouns
 * fit each place of each verb, which adjectives each noun. Made once for a question; immutable.
 */
final class ReadableWords {

  private final WorldKnowledge knowledge;
  private final FunctionWords words;
  private final Set<String> wanted;
  private final WordPool<NounForm> nouns;
  private final WordPool<Description> descriptions;
  private final Map<VerbForm, Map<ClauseMode, WordPool<Action>>> actions;
  private final WordPool<Situation> situations;
  private final List<ReadableScene> scenes;
  private final Map<Noun, WordPool<Description>> describing = new HashMap<>();
  private final Map<Adjective, WordPool<NounForm>> described = new HashMap<>();
  private final WordPool<NounPhrase> subjects;
  private final WordPool<NounPhrase> objects;
  private final Map<String, WordPool<NounForm>> landmarks = new HashMap<>();
  private final Map<Selection, WordPool<NounForm>> selected = new HashMap<>();

  /**
   * @param uses what a word in lower case is good for
   * @param wanted words that sentences should hold, as they stand or in another form
   */
  ReadableWords(WorldKnowledge knowledge, Function<String, WordUse> uses, Set<String> wanted) {
    this.knowledge = knowledge;
    this.words = new FunctionWords(uses, knowledge.closings());
    this.wanted = Set.copyOf(wanted);
    this.nouns = stock(knowledge.nouns().stream().flatMap(this::forms).toList(), NounForm::piece);
    this.descriptions =
        stock(
            knowledge.adjectives().stream().flatMap(this::description).toList(),
            Description::piece);
    nouns.all().map(NounForm::noun).forEach(this::layOut);
    descriptions
        .all()
        .map(Description::adjective)
        .forEach(each -> described.put(each, select(each.nouns())));
    this.subjects = pronouns(Pronoun::subject);
    this.objects = pronouns(Pronoun::object);
    this.actions = layOutActions();
    this.scenes = scenes();
    List<Situation> whole = knowledge.whereabouts().stream().flatMap(this::situation).toList();
    this.situations =
        new WordPool<>(List.of(), whole.stream().filter(Situation::holdsTarget).toList(), whole);
  }

  private List<ReadableScene> scenes() {
    Lemmas lemmas = new Lemmas(knowledge);
    List<ReadableScene> readable = new ArrayList<>();
    for (Scene scene : knowledge.scenes()) {
      String name = "scene " + readable.size();
      ReadableScene.of(scene, name, choice -> words.written(choice, lemmas))
          .ifPresent(readable::add);
    }
    return List.copyOf(readable);
  }

  private WordPool<NounPhrase> pronouns(Function<Pronoun, String> text) {
    return stock(
        Pronoun.ALL.stream().flatMap(each -> pronoun(each, text.apply(each))).toList(),
        phrase -> phrase.phrase().pieces().get(0));
  }

  private void layOut(Noun noun) {
    describing.computeIfAbsent(
        noun, key -> descriptions.where(each -> each.adjective().nouns().allows(key)));
    noun.landmarks()
        .forEach(
            preposition ->
                landmarks.computeIfAbsent(
                    preposition,
                    key ->
                        nouns.where(
                            form -> form.isOnePlace() && form.noun().landmarks().contains(key))));
  }

  private Stream<NounForm> forms(Noun noun) {
    Form first = noun.countability() == Countability.COUNT ? Form.ONE : Form.SOME;
    Form only = noun.countability() == Countability.PAIR ? Form.SEVERAL : first;
    return Stream.concat(
        form(noun, noun.singular(), only), form(noun, noun.plural(), Form.SEVERAL));
  }

  private Stream<NounForm> form(Noun noun, String text, Form form) {
    return words
        .content(text, noun.singular())
        .map(piece -> new NounForm(noun, piece, form))
        .stream();
  }

  private Stream<Description> description(Adjective adjective) {
    return words
        .content(adjective.text(), adjective.text())
        .map(piece -> new Description(adjective, piece))
        .stream();
  }

  private Map<VerbForm, Map<ClauseMode, WordPool<Action>>> layOutActions() {
    Map<VerbForm, Map<ClauseMode, WordPool<Action>>> all = new EnumMap<>(VerbForm.class);
    for (VerbForm shape : VerbForm.values()) {
      List<Action> whole =
          knowledge.frames().stream().flatMap(frame -> action(frame, shape)).toList();
      Map<ClauseMode, WordPool<Action>> byMode = new EnumMap<>(ClauseMode.class);
      for (ClauseMode mode : ClauseMode.values()) {
        byMode.put(
            mode,
            stock(
                whole.stream().filter(each -> each.frame().modes().contains(mode)).toList(),
                Action::verb));
      }
      all.put(shape, byMode);
    }
    return all;
  }

  private Stream<Action> action(VerbFrame frame, VerbForm shape) {
    return words
        .content(shape.of(frame.verb()), frame.verb().base())
        .map(verb -> action(frame, verb))
        .filter(Action::isWhole)
        .stream();
  }

  private Action action(VerbFrame frame, PhraseWord verb) {
    return new Action(
        frame,
        verb,
        select(frame.subject()),
        frame.object().map(this::select).orElseGet(WordPool::empty),
        frame.places().stream().flatMap(this::place).toList(),
        words.phrases(frame.rests()));
  }

  private Stream<ReadablePlace> place(PlacePhrase place) {
    WordPool<NounForm> fitting =
        place
            .nouns()
            .map(nouns -> at(place.preposition(), nouns))
            .orElseGet(() -> landmarks(place.preposition()));
    return fitting.isEmpty()
        ? Stream.empty()
        : words
            .word(place.preposition())
            .map(preposition -> new ReadablePlace(preposition, fitting))
            .stream();
  }

  /** One place, not several; nouns of a class must make a place with the preposition. */
  private WordPool<NounForm> at(String preposition, Selection nouns) {
    return select(nouns)
        .where(
            form ->
                form.isOnePlace()
                    && (nouns.names(form.noun())
                        || !Noun.LANDMARKS.contains(preposition)
                        || form.noun().landmarks().contains(preposition)));
  }

  private Stream<Situation> situation(Whereabouts whereabouts) {
    return Stream.of(
            new Situation(
                select(whereabouts.subject()),
                whereabouts.subject().allowsPeople(),
                whereabouts.places().stream().flatMap(this::place).toList()))
        .filter(Situation::isWhole);
  }

  /** The words that hold sentences together. */
  FunctionWords words() {
    return words;
  }

  /** The scenes of the kinds that are wanted that can have so many targets. */
  List<ReadableScene> scenes(int minimumTargets, CompositionRequest order) {
    return scenes.stream()
        .filter(each -> each.mostTargets() >= minimumTargets)
        .filter(each -> order.kinds().contains(each.kind()))
        .toList();
  }

  /** Who or what can be where. */
  WordPool<Situation> situations() {
    return situations;
  }

  private WordPool<NounForm> select(Selection selection) {
    return selected.computeIfAbsent(
        selection, key -> nouns.where(form -> selection.allows(form.noun(), form.piece().text())));
  }

  private WordPool<NounForm> landmarks(String preposition) {
    return landmarks.getOrDefault(preposition, WordPool.empty());
  }

  /** The adjectives that can be said of a noun. */
  WordPool<Description> describing(Noun noun) {
    return describing.getOrDefault(noun, WordPool.empty());
  }

  /** All adjectives. */
  WordPool<Description> descriptions() {
    return descriptions;
  }

  /** What can be done, with the verb in one of its forms. */
  WordPool<Action> actions(ClauseMode mode, VerbForm shape) {
    return actions.getOrDefault(shape, Map.of()).getOrDefault(mode, NOTHING_DONE);
  }

  private static final WordPool<Action> NOTHING_DONE = WordPool.empty();

  private <T> WordPool<T> stock(List<T> all, Function<T, PhraseWord> piece) {
    return WordPool.of(
        all, piece, word -> wanted.contains(word.text()) || wanted.contains(word.lemma()));
  }

  /** The nouns that an adjective can be said of. */
  WordPool<NounForm> describedBy(Adjective adjective) {
    return described.getOrDefault(adjective, WordPool.empty());
  }

  /** Pronouns, as subject or as object. */
  WordPool<NounPhrase> pronouns(NounRole role) {
    return role == NounRole.SUBJECT ? subjects : objects;
  }

  private Stream<NounPhrase> pronoun(Pronoun pronoun, String text) {
    return words
        .word(text)
        .map(word -> new NounPhrase(Phrase.of(word), pronoun.agreement(), List.of(), List.of()))
        .stream();
  }

  /** The words with the phonogram that the composer knows how to use, as a dictionary has them. */
  Set<String> targetLemmas() {
    return Stream.concat(
            Stream.concat(
                nouns.targets().stream().map(NounForm::piece),
                descriptions.targets().stream().map(Description::piece)),
            actions.values().stream()
                .flatMap(byMode -> byMode.values().stream())
                .flatMap(stock -> stock.targets().stream())
                .map(Action::verb))
        .map(PhraseWord::lemma)
        .collect(toUnmodifiableSet());
  }
}
