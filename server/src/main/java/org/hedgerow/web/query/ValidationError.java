package org.hedgerow.web.query;

import java.util.Optional;
import org.hedgerow.web.problems.ParameterError;
import org.hedgerow.web.problems.ProblemType;

/**
 * A validation error of a request.
 *
 * @param parameter the name of the parameter at error, or the path to it in a body
 * @param message what is wrong and what to do, for a teacher
 * @param nearest what could stand in its place: the nearest phonogram, value or name that exists
 */
public record ValidationError(
    ProblemType type, String parameter, String message, Optional<String> nearest) {

  public static ValidationError of(ProblemType type, String parameter, String message) {
    return new ValidationError(type, parameter, message, Optional.empty());
  }

  /** With what is meant perhaps, if there is anything near, and else with what there is. */
  public static ValidationError unknown(
      ProblemType type,
      String parameter,
      String wrong,
      Optional<String> nearest,
      String otherwise) {
    String advice = nearest.map("Did you mean “%s”?"::formatted).orElse(otherwise);
    return new ValidationError(type, parameter, wrong + " " + advice, nearest);
  }

  /** As it stands in a problem. */
  public ParameterError error() {
    return new ParameterError(parameter, message);
  }
}
