package org.hedgerow.web.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.PartOfSpeech;
import org.hedgerow.web.chart.ChartShape;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.Field;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.MeaningWords;
import org.hedgerow.web.query.QueryString;

/** The choices that narrow a list, or widen it, in a teacher's words. */
public final class Narrowing {

  static final String LETTERS = "letters";
  static final String POSITION = "position";
  static final String SYLLABLES = "syllables";
  static final String SHAPE = "shape";
  static final String COMMONNESS = "commonness";
  static final String PICTURABLE = "picturable";
  static final String PICTURED = "pictured";
  static final String PART_OF_SPEECH = "part-of-speech";
  static final String MEANING = "meaning";
  static final String MARK = "mark";
  public static final String TAUGHT = "taught";
  static final String SORT = "sort";
  static final String AFTER = "after";

  /** What a list is about; taking one of these away would make another list of it. */
  private static final List<String> TOPIC =
      List.of("phonogram", "value", "sound", "accent", "edition");

  private static final List<String> FIELDS =
      List.of(
          LETTERS,
          POSITION,
          SYLLABLES,
          SHAPE,
          COMMONNESS,
          PICTURABLE,
          PICTURED,
          PART_OF_SPEECH,
          MEANING,
          MARK,
          SORT,
          TAUGHT);

  private static final String ANY = "";
  private static final int MOST_SHAPES = 12;

  private final WordRequest request;
  private final QueryString address;

  /**
   * @param address the parameters of the list without defaults
   */
  Narrowing(WordRequest request, QueryString address) {
    this.request = request;
    this.address = address;
  }

  /** What most teachers choose from. */
  List<Field> fields() {
    List<Field> fields = new ArrayList<>();
    fields.add(field(LETTERS, "Letters", letters()));
    if (isAboutSound()) {
      fields.add(field(POSITION, "Where it is heard", positions()));
    }
    fields.add(field(SYLLABLES, "Syllables", syllables()));
    fields.add(field(PICTURABLE, "Drawing", texts(PICTURABLE, "0", "2", "3")));
    fields.add(field(PICTURED, "Pictures", texts(PICTURED, "false", "true")));
    fields.add(field(SORT, "Order", orders()));
    return List.copyOf(fields);
  }

  /**
   * What else can be chosen.
   *
   * @param shapes the shapes there are, with an example and the number of words, most words first
   */
  List<Field> rarerFields(List<ChartShape> shapes) {
    return List.of(
        field(MARK, "Judged for children", marks()),
        field(COMMONNESS, "How common", commonness()),
        field(SHAPE, "Shape", shapes(shapes)),
        field(PART_OF_SPEECH, "Kind of word", partsOfSpeech()),
        field(MEANING, "About", meanings()));
  }

  private boolean isAboutSound() {
    return request.phonogram().isPresent() || request.sound().isPresent();
  }

  private Field field(String name, String label, Map<String, String> texts) {
    String usual = texts.keySet().iterator().next();
    return Field.of(
        name, label, texts, address.get(name).orElse(usual), value -> ChoiceWords.of(name, value));
  }

  private static Map<String, String> letters() {
    Map<String, String> texts = start("any number");
    for (String letters : List.of("2", "3", "4", "5", "6", "7-40")) {
      texts.put(letters, ChoiceWords.of(LETTERS, letters));
    }
    return texts;
  }

  private static Map<String, String> positions() {
    Map<String, String> texts = start("anywhere");
    for (String position : List.of("start", "middle", "end")) {
      texts.put(position, ChoiceWords.of(POSITION, position));
    }
    return texts;
  }

  private static Map<String, String> syllables() {
    Map<String, String> texts = start("any number");
    for (String syllables : List.of("1", "2", "3-9")) {
      texts.put(syllables, ChoiceWords.of(SYLLABLES, syllables));
    }
    return texts;
  }

  private static Map<String, String> shapes(List<ChartShape> shapes) {
    Map<String, String> texts = start("any shape");
    shapes.stream()
        .limit(MOST_SHAPES)
        .forEach(
            shape ->
                texts.put(
                    shape.shape(),
                    "%s, like %s (%d)".formatted(shape.shape(), shape.example(), shape.words())));
    return texts;
  }

  private static Map<String, String> commonness() {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String least : List.of("2", "3", "4", "5", "1")) {
      texts.put(least, ChoiceWords.of(COMMONNESS, least));
    }
    return texts;
  }

  private static Map<String, String> texts(String name, String... values) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String value : values) {
      texts.put(value, ChoiceWords.of(name, value));
    }
    return texts;
  }

  private static Map<String, String> partsOfSpeech() {
    Map<String, String> texts = start("any");
    for (PartOfSpeech part : PartOfSpeech.values()) {
      texts.put(part.label(), ChoiceWords.of(PART_OF_SPEECH, part.label()));
    }
    return texts;
  }

  private static Map<String, String> meanings() {
    Map<String, String> texts = start("anything");
    MeaningWords.OFFERED.forEach(value -> texts.put(value, ChoiceWords.of(MEANING, value)));
    return texts;
  }

  private static Map<String, String> marks() {
    Map<String, String> texts = start("any word");
    texts.put("starter", ChoiceWords.of(MARK, "starter"));
    return texts;
  }

  private static Map<String, String> orders() {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String order :
        List.of("default", "spelling", "letters", "commonness", "picturable", "syllables")) {
      texts.put(order, ChoiceWords.of(SORT, order));
    }
    return texts;
  }

  private static Map<String, String> start(String any) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put(ANY, any);
    return texts;
  }

  /** The parameters that the form has no field for and sends again. */
  List<Choice> hidden() {
    return address.parameters().entrySet().stream()
        .filter(parameter -> !FIELDS.contains(parameter.getKey()))
        .map(parameter -> new Choice(parameter.getValue(), parameter.getKey(), true))
        .toList();
  }

  /** What has been chosen; each can be taken away again. */
  List<Chip> chips() {
    return address.parameters().entrySet().stream()
        .filter(parameter -> isChip(parameter.getKey()))
        .map(parameter -> chip(parameter.getKey(), parameter.getValue()))
        .toList();
  }

  private boolean isChip(String name) {
    boolean isTopic = TOPIC.contains(name) || (name.equals(SHAPE) && !isAboutSound());
    return !isTopic && !name.equals("limit");
  }

  private Chip chip(String name, String value) {
    return new Chip(ChoiceWords.of(name, value), ListAddress.ofList(address.without(name)));
  }

  /** The list with nothing chosen. */
  String cleared() {
    QueryString topic = address;
    for (String name : address.parameters().keySet()) {
      topic = isChip(name) ? topic.without(name) : topic;
    }
    return ListAddress.ofList(topic);
  }

  String taught() {
    return address.get(TAUGHT).orElse("").replace(",", ", ");
  }
}
