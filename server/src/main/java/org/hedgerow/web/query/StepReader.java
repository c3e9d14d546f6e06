package org.hedgerow.web.query;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.lexicon.Plans;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.problems.ProblemType;

/** Reads steps of sequences: {@code ours:12} is everything taught up to step 12 of ours. */
final class StepReader {

  private static final String BEFORE_NUMBER = ":";

  private final Plans plans;
  private final String accent;
  private final ValidationErrors errors;

  StepReader(Plans plans, String accent, ValidationErrors errors) {
    this.plans = plans;
    this.accent = accent;
    this.errors = errors;
  }

  /**
   * @param label as it is written in short
   */
  record Step(String label, Set<Correspondence> taught) {}

  static boolean looksLikeStep(String text) {
    return text.contains(BEFORE_NUMBER);
  }

  /** Empty if something was wrong. */
  Optional<Step> read(String parameter, String text) {
    String[] parts = text.strip().toLowerCase(Locale.ROOT).split(BEFORE_NUMBER, 2);
    Optional<Sequence> sequence = plans.sequence(parts[0].strip(), accent);
    if (sequence.isEmpty()) {
      errors.add(unknown(parameter, parts[0]));
    }
    return sequence.flatMap(found -> step(parameter, found, parts[1].strip()));
  }

  private Optional<Step> step(String parameter, Sequence sequence, String number) {
    int last = sequence.steps().size();
    if (!number.matches("[1-9][0-9]{0,3}") || Integer.parseInt(number) > last) {
      errors.add(unknownStep(parameter, sequence, number, last));
      return Optional.empty();
    }
    int step = Integer.parseInt(number);
    return Optional.of(new Step(sequence.name() + BEFORE_NUMBER + step, sequence.taughtBy(step)));
  }

  private ValidationError unknown(String parameter, String name) {
    List<Sequence> sequences = plans.sequences(accent);
    String message =
        "There is no sequence %s. There are %s; write a step as in ours:12."
            .formatted(
                Quoted.of(name), sequences.stream().map(Sequence::name).collect(joining(", ")));
    return ValidationError.of(ProblemType.UNKNOWN_SEQUENCE, parameter, message);
  }

  private static ValidationError unknownStep(
      String parameter, Sequence sequence, String number, int last) {
    return ValidationError.of(
        ProblemType.UNKNOWN_SEQUENCE,
        parameter,
        "The sequence %s has no step %s. Its steps are 1 to %d."
            .formatted(sequence.name(), Quoted.of(number), last));
  }
}
