package org.hedgerow.web.query;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.hedgerow.lexicon.Range;
import org.jspecify.annotations.Nullable;

/**
 * A query parameter with a type: how its text is read, what holds where it isn't given, how it is
 * repeated in answers, and how a teacher chooses it. Immutable.
 *
 * @param <T> what it stands for
 */
public final class Parameter<T> {

  /** Reads the text of a parameter. */
  @FunctionalInterface
  public interface Reader<T> {
    /**
     * @param before the parameters that stand before it in their table
     * @return empty, and an error added to theirs, if the text can't be read
     */
    Optional<T> read(String text, ParameterValues before);
  }

  /** How a value is repeated in answers. */
  public enum JsonForm {
    TEXT,
    NUMBER,
    BOOLEAN,
    LIST,
    /** Not at all. */
    NONE
  }

  /**
   * How a teacher chooses.
   *
   * @param title of the field
   * @param unchosen the text of leaving it open; empty where the first of the values does that
   * @param values to choose from
   */
  public record Offer(String title, String unchosen, List<String> values) {
    public Offer {
      values = List.copyOf(values);
    }
  }

  private final String name;
  private final Reader<T> reader;
  private final Function<T, String> label;
  private final Function<ParameterValues, Optional<T>> otherwise;
  private final JsonForm json;
  private final List<String> choices;
  private final UnaryOperator<String> wording;
  private final Optional<Offer> offer;

  private Parameter(Builder<T> builder) {
    this.name = builder.name;
    this.reader = builder.reader;
    this.label = builder.label;
    this.otherwise = builder.otherwise;
    this.json = builder.json;
    this.choices = builder.choices;
    this.wording = builder.wording;
    this.offer = Optional.ofNullable(builder.offer);
  }

  /**
   * @param label writes a value as it stands in addresses
   */
  public static <T> Builder<T> of(String name, Reader<T> reader, Function<T, String> label) {
    return new Builder<>(name, reader, label);
  }

  /** One of some values, each with a name. */
  public static <T> Builder<T> choice(String name, List<T> values, Function<T, String> label) {
    List<String> labels = values.stream().map(label).toList();
    Reader<T> reader =
        (text, before) ->
            new ChoiceReader(before.given())
                .name(name, text, labels, found -> named(found, values, label));
    return of(name, reader, label).choices(labels);
  }

  /** Several of some values, with commas between; none by default. */
  public static <T extends Comparable<T>> Builder<Set<T>> choices(
      String name, List<T> values, Function<T, String> label) {
    List<String> labels = values.stream().map(label).toList();
    Reader<Set<T>> reader =
        (text, before) -> {
          ChoiceReader choices = new ChoiceReader(before.given());
          Set<T> found = new TreeSet<>();
          for (String each : text.split(",", -1)) {
            choices
                .name(name, each, labels, one -> named(one, values, label))
                .ifPresent(found::add);
          }
          return Optional.of(found);
        };
    return of(name, reader, (Set<T> found) -> joined(found, label))
        .choices(labels)
        .otherwise(Set.of())
        .json(JsonForm.LIST);
  }

  private static <T> Optional<T> named(String name, List<T> values, Function<T, String> label) {
    return values.stream().filter(each -> label.apply(each).equals(name)).findFirst();
  }

  private static <T> String joined(Collection<T> values, Function<T, String> label) {
    return String.join(",", values.stream().map(label).toList());
  }

  /** Whether something is so; by default it isn't asked for. */
  public static Builder<Boolean> flag(String name) {
    return choice(name, List.of(true, false), String::valueOf)
        .otherwise(false)
        .json(JsonForm.BOOLEAN);
  }

  /** A whole number. */
  public static Builder<Integer> number(String name, Range allowed, int otherwise) {
    Reader<Integer> reader =
        (text, before) ->
            Optional.of(new ChoiceReader(before.given()).number(name, allowed, otherwise));
    return of(name, reader, String::valueOf).otherwise(otherwise).json(JsonForm.NUMBER);
  }

  /** A number, or the least and the most. */
  public static Builder<Range> range(String name) {
    return of(
        name,
        (text, before) -> new ChoiceReader(before.given()).range(name, text),
        Range::toString);
  }

  public String name() {
    return name;
  }

  /** The names there are to choose from; none where any text may stand. */
  public List<String> choices() {
    return choices;
  }

  public Optional<Offer> offer() {
    return offer;
  }

  /** A value as it stands in addresses, in a teacher's words. */
  public String words(String text) {
    return wording.apply(text);
  }

  /** What a teacher chooses from, in words, by the text in addresses. */
  public Map<String, String> offered() {
    Map<String, String> texts = new LinkedHashMap<>();
    offer()
        .ifPresent(
            offer -> {
              if (!offer.unchosen().isEmpty()) {
                texts.put("", offer.unchosen());
              }
              offer.values().forEach(value -> texts.put(value, words(value)));
            });
    return texts;
  }

  Optional<T> read(String text, ParameterValues before) {
    return reader.read(text, before);
  }

  Optional<T> otherwise(ParameterValues before) {
    return otherwise.apply(before);
  }

  String label(T value) {
    return label.apply(value);
  }

  JsonForm json() {
    return json;
  }

  @Override
  public String toString() {
    return name;
  }

  /** Puts a parameter together. */
  public static final class Builder<T> {
    private final String name;
    private final Function<T, String> label;
    private Reader<T> reader;
    private Function<ParameterValues, Optional<T>> otherwise = before -> Optional.empty();
    private JsonForm json = JsonForm.TEXT;
    private List<String> choices = List.of();
    private UnaryOperator<String> wording;
    private @Nullable Offer offer;

    private Builder(String name, Reader<T> reader, Function<T, String> label) {
      this.name = name;
      this.reader = reader;
      this.label = label;
      this.wording = text -> name + " " + text;
    }

    private Builder<T> choices(List<String> names) {
      this.choices = List.copyOf(names);
      return this;
    }

    /**
     * @param check adds an error if the parameter can't be used beside those before it
     */
    public Builder<T> checked(Consumer<ParameterValues> check) {
      Reader<T> unchecked = reader;
      this.reader =
          (text, before) -> {
            check.accept(before);
            return unchecked.read(text, before);
          };
      return this;
    }

    /** What holds where it isn't given. */
    public Builder<T> otherwise(T value) {
      return otherwise(before -> Optional.of(value));
    }

    /** What holds where it isn't given, by the parameters that stand before it. */
    public Builder<T> otherwise(Function<ParameterValues, Optional<T>> value) {
      this.otherwise = value;
      return this;
    }

    public Builder<T> json(JsonForm form) {
      this.json = form;
      return this;
    }

    /**
     * @param words says a value in a teacher's words
     */
    public Builder<T> worded(UnaryOperator<String> words) {
      this.wording = words;
      return this;
    }

    /** Chosen on pages from some values, of which the first is the default. */
    public Builder<T> offered(String title, String... values) {
      return offered(new Offer(title, "", Arrays.asList(values)));
    }

    /** Chosen on pages from some values, or left open. */
    public Builder<T> offeredOr(String unchosen, String title, List<String> values) {
      return offered(new Offer(title, unchosen, values));
    }

    private Builder<T> offered(Offer newOffer) {
      this.offer = newOffer;
      return this;
    }

    public Parameter<T> build() {
      return new Parameter<>(this);
    }
  }
}
