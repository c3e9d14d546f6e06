package org.hedgerow.web.words;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.RuleSets;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Shape;
import org.hedgerow.lexicon.Word;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.web.chart.Chart;
import org.hedgerow.web.chart.ChartMaker;
import org.hedgerow.web.chart.ChartShape;
import org.hedgerow.web.chart.ChartValue;
import org.hedgerow.web.page.AccentForm;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.OldEdition;
import org.hedgerow.web.page.ShownPicture;
import org.hedgerow.web.page.ShownWord;
import org.hedgerow.web.page.SoundLabel;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.QueryString;

/** Makes the page of one list. For one request. */
public final class ListPageMaker {

  /** The most words that one page holds, as in the HTTP interface. */
  private static final int MAX = 500;

  private final Lexicon lexicon;
  private final Lexicon newest;
  private final ChosenAccents accents;
  private final Chart chart;
  private final PageQuestion question;
  private final WordRequest request;

  /** The parameters of the list, without defaults and without the place in it. */
  private final QueryString list;

  private final List<Word> all;

  /**
   * @param lexicon the edition that the question is asked of
   * @throws org.hedgerow.web.query.InvalidQueryException if something is wrong with the question
   */
  public ListPageMaker(Lexicon lexicon, Lexicon newest, ChartMaker charts, PageQuestion question) {
    this.lexicon = lexicon;
    this.newest = newest;
    this.question = question;
    this.request = question.request(lexicon);
    this.accents = ChosenAccents.of(lexicon, request.query().accents());
    this.chart = charts.chart(lexicon, accents);
    this.list = request.values().chosen();
    this.all = WordList.all(lexicon, request);
  }

  /** The address by which just this page is shown again. */
  public String address() {
    return question.word().map(this::lookingAt).orElseGet(() -> ListAddress.ofList(here()));
  }

  /** The parameters of this page without the word. */
  private QueryString here() {
    return request.after().map(after -> list.with(ParameterNames.AFTER, after)).orElse(list);
  }

  private String lookingAt(String word) {
    return ListAddress.ofList(here().with(PageQuestion.WORD, word));
  }

  public ListPage page() {
    return page(new FilterChoices(request, list).taught(), "");
  }

  /**
   * @param taught what stands in the field for the phonograms that are taught
   * @param taughtError what is wrong with that, or an empty text
   */
  public ListPage page(String taught, String taughtError) {
    WordList found = WordList.find(lexicon, request);
    FilterChoices narrowing = new FilterChoices(request, list);
    return new ListPage(
        topic(),
        all.size(),
        request.offset() + 1,
        found.words().stream().map(this::tag).toList(),
        narrowing.form(shapes(), taught, taughtError),
        all.isEmpty() ? new WiderLists(lexicon, request).wider() : List.of(),
        all.stream().map(Word::spelling).collect(joining("\n")),
        found.next().map(after -> ListAddress.ofList(list.with(ParameterNames.AFTER, after))),
        request.offset() > 0 ? Optional.of(ListAddress.ofList(list)) : Optional.empty(),
        allAtOnce(found),
        list.toString(),
        look(),
        accentForm(),
        ListAddress.ofChart(accents.parameter()),
        OldEdition.of(lexicon, newest, ListAddress.ofList(list.without(EditionChoice.PARAMETER))));
  }

  private Optional<String> allAtOnce(WordList found) {
    return found.words().size() < all.size() && all.size() <= MAX
        ? Optional.of(ListAddress.ofList(list.with("limit", String.valueOf(MAX))))
        : Optional.empty();
  }

  private AccentForm accentForm() {
    QueryString rest = list.without(ChosenAccents.PARAMETER).without("rules");
    return new AccentForm(
        accents.names(),
        accents.choices(),
        rules(),
        rest.parameters().entrySet().stream()
            .map(each -> new Choice(each.getValue(), each.getKey(), true))
            .toList(),
        Optional.of("/compare?" + ComparePages.asked(list, accents)));
  }

  /** The named sets of reading rules, and the rules chosen if no set has them. */
  private List<Choice> rules() {
    RuleSets sets = lexicon.plans().rules();
    ReadingRules rules = request.query().standard().rules();
    List<Choice> choices = new ArrayList<>();
    for (RuleSet each : sets.all()) {
      choices.add(new Choice(each.name(), each.title(), each.rules().equals(rules)));
    }
    if (sets.with(rules).isEmpty()) {
      choices.add(new Choice(rules.label(), "Rules of your own", true));
    }
    return choices;
  }

  private Topic topic() {
    String grapheme = request.phonogram().map(value -> value.grapheme().text()).orElse("");
    List<ChartValue> values = chart.valuesOf(grapheme);
    boolean plain = request.phonogram().isEmpty() && request.sound().isEmpty();
    return new Topic(
        values.stream()
            .filter(value -> request.phonogram().equals(Optional.of(value.correspondence())))
            .findFirst(),
        request.sound().map(sound -> SoundLabel.of(List.of(sound))),
        values,
        plain ? chart.shapes() : List.of(),
        request.query().shape().orElse(""));
  }

  private WordTag tag(Word word) {
    String spelling = word.spelling();
    return new WordTag(
        spelling,
        ShownWord.of(word, accent()).pieces(request.query().standard()),
        lookingAt(spelling),
        lexicon.pictures().of(word).map(picture -> ShownPicture.of(picture).address()),
        question.word().equals(Optional.of(spelling)));
  }

  private String accent() {
    return request.query().accents().get(0);
  }

  /** The shapes of the list before one is chosen, most words first. */
  private List<ChartShape> shapes() {
    Map<String, List<Word>> byShape = new LinkedHashMap<>();
    for (Word word : withoutShape()) {
      ShownWord.of(word, accent())
          .alignment()
          .map(Shape::of)
          .filter(shape -> shape.matches(Shape.FORM))
          .ifPresent(
              shape -> byShape.computeIfAbsent(shape, missing -> new ArrayList<>()).add(word));
    }
    return byShape.entrySet().stream()
        .map(
            entry ->
                new ChartShape(
                    entry.getKey(),
                    entry.getValue().get(0).spelling(),
                    entry.getValue().size(),
                    accents.parameter()))
        .sorted(Comparator.comparing(ChartShape::words).reversed())
        .toList();
  }

  private List<Word> withoutShape() {
    if (request.query().shape().isEmpty()) {
      return all;
    }
    return WordList.all(lexicon, request.without(WordParameters.SHAPE));
  }

  private WordPanel look() {
    return new WordPanelMaker(lexicon, request, all).look(question.word(), here(), topic());
  }
}
