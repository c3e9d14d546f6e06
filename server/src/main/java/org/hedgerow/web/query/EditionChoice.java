package org.hedgerow.web.query;

import java.util.Optional;
import java.util.regex.Pattern;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/** Chooses the edition that a question is asked of. */
public final class EditionChoice {
  public static final String PARAMETER = "edition";

  private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,8}");

  private EditionChoice() {}

  /**
   * The edition that is named; else the one in which a list was begun that is to go on; else the
   * newest.
   *
   * @param parameters whose errors it adds to
   */
  public static Lexicon of(Editions editions, Parameters parameters) {
    return of(editions, editions.newest(), parameters);
  }

  /** Whether an edition is named, or a list is to go on in the one in which it was begun. */
  public static boolean isPinned(Parameters parameters) {
    return parameters.text(PARAMETER).isPresent()
        || parameters.text(ParameterNames.AFTER).isPresent();
  }

  /**
   * The same, where the newest edition is known, or is about to be the newest.
   *
   * @param parameters whose errors it adds to
   */
  public static Lexicon of(Editions editions, Lexicon newest, Parameters parameters) {
    Optional<String> named = parameters.text(PARAMETER);
    return named.isPresent()
        ? named(editions, named.get(), parameters.errors())
        : begun(editions, parameters).orElse(newest);
  }

  private static Optional<Lexicon> begun(Editions editions, Parameters parameters) {
    return parameters
        .text(ParameterNames.AFTER)
        .flatMap(Cursor::read)
        .flatMap(cursor -> editions.at(cursor.edition()));
  }

  /**
   * The edition that is named.
   *
   * @param errors to which it adds; then the newest stands for it
   */
  public static Lexicon named(Editions editions, String text, ValidationErrors errors) {
    if (!NUMBER.matcher(text).matches()) {
      errors.invalid(
          PARAMETER, "edition must be a whole number from 1, not %s.".formatted(Quoted.of(text)));
      return editions.newest();
    }
    Optional<Lexicon> found = editions.at(Integer.parseInt(text));
    if (found.isEmpty()) {
      errors.add(unknown(text, editions.newest().edition()));
    }
    return found.orElseGet(editions::newest);
  }

  /** What to throw where an edition can be read, but nothing is recorded of it. */
  public static ProblemException unrecorded(int number) {
    return Problem.at(
            ProblemType.UNKNOWN_EDITION,
            PARAMETER,
            "Nothing is recorded of edition %d.".formatted(number))
        .exception();
  }

  private static ValidationError unknown(String number, int newest) {
    return ValidationError.of(
        ProblemType.UNKNOWN_EDITION,
        PARAMETER,
        "There is no edition %s; the newest is %d. Leave edition out to get it."
            .formatted(number, newest));
  }
}
