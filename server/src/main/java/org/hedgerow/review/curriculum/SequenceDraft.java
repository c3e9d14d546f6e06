package org.hedgerow.review.curriculum;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.lexicon.Plans;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.review.Given;
import org.jspecify.annotations.Nullable;

/**
 * An order of teaching as somebody writes it.
 *
 * @param steps in each the values that are taught together, as in {@code sh} or {@code oo 2}; a
 *     phonogram without a number stands for all its values
 */
public record SequenceDraft(String name, String title, String note, List<List<String>> steps)
    implements SetDraft<Sequence> {
  static final int MAX_STEPS = 200;

  private static final Pattern VALUE = Pattern.compile("([a-z]+(?:-e)?) ?([0-9]{0,2})");

  public SequenceDraft(
      @Nullable String name,
      @Nullable String title,
      @Nullable String note,
      @Nullable List<List<String>> steps) {
    this.name = Given.text(name);
    this.title = Given.text(title);
    this.note = Given.text(note);
    this.steps = Given.list(steps);
  }

  public static SequenceDraft of(Sequence sequence) {
    return new SequenceDraft(
        sequence.name(),
        sequence.title(),
        sequence.note(),
        sequence.steps().stream()
            .map(step -> step.stream().map(Correspondence::label).toList())
            .toList());
  }

  /** From a step on each line, with commas between the values. */
  public static List<List<String>> steps(String text) {
    return text.lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty())
        .map(line -> List.of(line.split("\\s*,\\s*")))
        .toList();
  }

  /** The other way round. */
  public String stepsInLines() {
    return steps.stream().map(step -> String.join(", ", step)).collect(joining("\n"));
  }

  @Override
  public List<FieldError> contentErrors(Catalogue catalogue) {
    List<FieldError> errors = new ArrayList<>();
    if (name.equals(Plans.COMPUTED)) {
      errors.add(
          new FieldError("name", "“%s” is worked out by the program.".formatted(Plans.COMPUTED)));
    }
    if (steps.isEmpty() || steps.size() > MAX_STEPS) {
      errors.add(new FieldError("steps", "From 1 to %d steps.".formatted(MAX_STEPS)));
    }
    Set<Correspondence> taught = new HashSet<>();
    for (int i = 0; i < Math.min(steps.size(), MAX_STEPS); i++) {
      if (steps.get(i).isEmpty()) {
        errors.add(
            new FieldError(
                "steps[%d]".formatted(i),
                "Step %d is empty. Name what it teaches, or leave it out.".formatted(i + 1)));
      }
      for (String value : steps.get(i)) {
        error(value, i + 1, catalogue, taught).ifPresent(errors::add);
      }
    }
    return errors;
  }

  private static Optional<FieldError> error(
      String value, int step, Catalogue catalogue, Set<Correspondence> taught) {
    List<Correspondence> meant = values(value, catalogue);
    if (meant.isEmpty()) {
      return Optional.of(
          new FieldError(
              "steps",
              "Step %d: “%s” is no phonogram that we know. Write it as in sh, a-e or oo 2."
                  .formatted(step, value)));
    }
    if (!taught.addAll(meant)) {
      return Optional.of(
          new FieldError(
              "steps", "Step %d: “%s” is taught before already.".formatted(step, value)));
    }
    return Optional.empty();
  }

  private static List<Correspondence> values(String text, Catalogue catalogue) {
    Matcher parts = VALUE.matcher(text.strip());
    if (!parts.matches()) {
      return List.of();
    }
    String number = parts.group(2);
    return catalogue.values(parts.group(1)).stream()
        .filter(
            value -> number.isEmpty() || number.equals(String.valueOf(value.value().orElseThrow())))
        .toList();
  }

  @Override
  public Map<String, Object> content() {
    return Map.of("steps", stepsInLines());
  }

  @Override
  public Sequence toSet(Catalogue catalogue) {
    return new Sequence(
        name,
        title,
        note,
        steps.stream()
            .map(step -> step.stream().flatMap(value -> values(value, catalogue).stream()).toList())
            .toList());
  }
}
