package org.hedgerow.web.query;

import java.util.Optional;
import java.util.function.IntFunction;
import org.hedgerow.lexicon.Range;
import org.hedgerow.web.problems.ProblemType;

/** Which part of a list of an edition somebody asks for, and where they go on. */
public final class Paging {

  /** How many of a list may be asked for at once. */
  static final Range LIMITS = new Range(1, 500);

  static final int DEFAULT_LIMIT = 50;

  /** Tables are whole up to here, about a megabyte; then they go on like lists. */
  private static final int WHOLE = 5_000;

  /** How many the answer may have: by default 50, and of a table all. */
  public static int limit(Parameters parameters) {
    Range limits = parameters.isForTable() ? new Range(1, WHOLE) : LIMITS;
    int usual = parameters.isForTable() ? WHOLE : DEFAULT_LIMIT;
    return new ChoiceReader(parameters).number(ParameterNames.LIMIT, limits, usual);
  }

  private Paging() {}

  /**
   * The cursor that is given; empty if none is.
   *
   * @param parameters to whose errors it adds one if it can't be read
   */
  public static Optional<Cursor> cursor(Parameters parameters) {
    Optional<String> text = parameters.text(ParameterNames.AFTER);
    Optional<Cursor> cursor = text.flatMap(Cursor::read);
    if (text.isPresent() && cursor.isEmpty()) {
      parameters.errors().add(invalid());
    }
    return cursor;
  }

  /**
   * How many of a list come before the place of a cursor.
   *
   * @param place the place in that list after so many
   * @throws InvalidQueryException if it is a place in another list
   */
  public static int offset(Cursor cursor, IntFunction<Cursor> place, Parameters parameters) {
    if (!cursor.sameList(place.apply(cursor.offset()))) {
      parameters.errors().add(invalid());
    }
    parameters.errors().throwIfAny();
    return cursor.offset();
  }

  private static ValidationError invalid() {
    return ValidationError.of(
        ProblemType.INVALID_CURSOR,
        ParameterNames.AFTER,
        "This isn't a place in this list. Take the next of an answer to the same question,"
            + " or leave after out to begin again.");
  }
}
