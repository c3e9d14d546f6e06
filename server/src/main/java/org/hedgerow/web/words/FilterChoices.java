package org.hedgerow.web.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hedgerow.web.chart.ChartShape;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.Field;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.query.Parameter;
import org.hedgerow.web.query.QueryString;

/** The choices that narrow a list, or widen it, in a teacher's words. */
final class FilterChoices {

  /** What most teachers choose from. */
  private static final List<Parameter<?>> COMMON =
      List.of(
          WordParameters.LETTERS,
          WordParameters.POSITION,
          WordParameters.SYLLABLES,
          WordParameters.PICTURABLE,
          WordParameters.PICTURED,
          WordParameters.SORT);

  private static final List<Parameter<?>> RARER =
      List.of(
          WordParameters.MARK,
          WordParameters.COMMONNESS,
          WordParameters.SHAPE,
          WordParameters.PART_OF_SPEECH,
          WordParameters.MEANING);

  /** What a list is about; taking one of these away would make another list of it. */
  private static final List<Parameter<?>> TOPIC =
      List.of(
          WordParameters.PHONOGRAM,
          WordParameters.VALUE,
          WordParameters.SOUND,
          WordParameters.ACCENT,
          WordParameters.EDITION);

  private static final int MAX_SHAPES = 12;

  private final WordRequest request;
  private final QueryString address;

  /**
   * @param address the parameters of the list without defaults
   */
  FilterChoices(WordRequest request, QueryString address) {
    this.request = request;
    this.address = address;
  }

  /**
   * @param shapes the shapes there are, with an example and the number of words, most words first
   * @param taught what stands in the field for the phonograms that are taught
   * @param taughtError what is wrong with that, or an empty text
   */
  FilterForm form(List<ChartShape> shapes, String taught, String taughtError) {
    return new FilterForm(
        fields(), rarerFields(shapes), rime(), hidden(), taught, taughtError, chips(), cleared());
  }

  private List<Field> fields() {
    return COMMON.stream()
        .filter(parameter -> isAboutSound() || parameter != WordParameters.POSITION)
        .map(parameter -> Field.of(parameter, address))
        .toList();
  }

  private List<Field> rarerFields(List<ChartShape> shapes) {
    return RARER.stream()
        .map(
            parameter ->
                parameter == WordParameters.SHAPE
                    ? Field.of(parameter, shapes(shapes), address)
                    : Field.of(parameter, address))
        .toList();
  }

  private boolean isAboutSound() {
    return request.phonogram().isPresent() || request.sound().isPresent();
  }

  private static Map<String, String> shapes(List<ChartShape> shapes) {
    Map<String, String> texts = new LinkedHashMap<>(WordParameters.SHAPE.offered());
    shapes.stream()
        .limit(MAX_SHAPES)
        .forEach(
            shape ->
                texts.put(
                    shape.shape(),
                    "%s, like %s (%d)".formatted(shape.shape(), shape.example(), shape.words())));
    return texts;
  }

  private List<Choice> hidden() {
    return address.parameters().entrySet().stream()
        .filter(parameter -> !hasField(parameter.getKey()))
        .map(parameter -> new Choice(parameter.getValue(), parameter.getKey(), true))
        .toList();
  }

  private static boolean hasField(String name) {
    return Stream.of(COMMON, RARER, List.of(WordParameters.TAUGHT, WordParameters.RIME))
        .flatMap(List::stream)
        .anyMatch(parameter -> parameter.name().equals(name));
  }

  /** What has been chosen; each can be removed again. */
  private List<Chip> chips() {
    return address.parameters().entrySet().stream()
        .filter(parameter -> isChip(parameter.getKey()))
        .map(parameter -> chip(parameter.getKey(), parameter.getValue()))
        .toList();
  }

  private boolean isChip(String name) {
    boolean isTopic =
        TOPIC.stream().anyMatch(parameter -> parameter.name().equals(name))
            || (name.equals(WordParameters.SHAPE.name()) && !isAboutSound());
    return !isTopic && !name.equals(WordParameters.LIMIT.name());
  }

  private Chip chip(String name, String value) {
    return new Chip(WordParameters.words(name, value), ListAddress.ofList(address.without(name)));
  }

  private String cleared() {
    QueryString topic = address;
    for (String name : address.parameters().keySet()) {
      topic = isChip(name) ? topic.without(name) : topic;
    }
    return ListAddress.ofList(topic);
  }

  private String rime() {
    return address.get(WordParameters.RIME.name()).orElse("");
  }

  String taught() {
    return address.get(WordParameters.TAUGHT.name()).orElse("").replace(",", ", ");
  }
}
