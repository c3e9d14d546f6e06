package org.hedgerow.web.query;

import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Range;
import org.hedgerow.web.problems.ProblemType;

/** Reads which part is asked for of a list that comes as a {@code KeysetPage}. */
public final class KeysetParameters {
  public static final String LIMIT = "limit";
  public static final String AFTER = "after";

  private static final int DEFAULT_LIMIT = 50;
  private static final int MAX_EDITIONS = 999_999;
  private static final String NUMBER = "[1-9][0-9]{0,8}";

  private KeysetParameters() {}

  /** At most so many items; 50 where nothing is said. */
  public static int limit(Parameters parameters, int max) {
    return limit(parameters, max, DEFAULT_LIMIT);
  }

  public static int limit(Parameters parameters, int max, int usual) {
    return new ChoiceReader(parameters).number(LIMIT, new Range(1, max), usual);
  }

  /** The number to go on after; empty if none is given. */
  public static OptionalInt afterNumber(Parameters parameters) {
    Optional<String> text = parameters.text(AFTER);
    if (text.filter(number -> !number.matches(NUMBER)).isPresent()) {
      parameters.errors().add(invalid(text.get()));
      return OptionalInt.empty();
    }
    return text.map(Integer::valueOf).map(OptionalInt::of).orElse(OptionalInt.empty());
  }

  /** The number of the edition to go on after; greater than all if none is given. */
  public static int afterEdition(Parameters parameters) {
    return new ChoiceReader(parameters).number(AFTER, new Range(1, MAX_EDITIONS), MAX_EDITIONS + 1);
  }

  /** The word to go on after; an empty text, which comes before all, if none is given. */
  public static String afterWord(Parameters parameters) {
    return parameters
        .text(AFTER)
        .flatMap(text -> new SpellingReader(parameters.errors()).read(AFTER, text))
        .orElse("");
  }

  /** That {@code after} isn't what an answer gave as {@code next}. */
  public static ValidationError invalid(String after) {
    return ValidationError.of(
        ProblemType.INVALID_CURSOR,
        AFTER,
        "%s is no place in this list. Take the next of the answer before."
            .formatted(Quoted.of(after)));
  }
}
