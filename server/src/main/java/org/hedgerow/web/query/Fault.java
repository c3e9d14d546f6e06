package org.hedgerow.web.query;

import java.util.Optional;
import org.hedgerow.web.problems.ParameterError;
import org.hedgerow.web.problems.ProblemType;

/**
 * One thing that is wrong with a question.
 *
 * @param parameter the name of the parameter at fault, or the path to it in a body
 * @param message what is wrong and what to do, for a teacher
 * @param nearest what could stand in its place: the nearest phonogram, value or name that exists
 */
public record Fault(ProblemType type, String parameter, String message, Optional<String> nearest) {

  static Fault of(ProblemType type, String parameter, String message) {
    return new Fault(type, parameter, message, Optional.empty());
  }

  static Fault invalid(String parameter, String message) {
    return of(ProblemType.INVALID_PARAMETER, parameter, message);
  }

  /** With what is meant perhaps, if there is anything near, and else with what there is. */
  static Fault unknown(
      ProblemType type,
      String parameter,
      String wrong,
      Optional<String> nearest,
      String otherwise) {
    String advice = nearest.map("Did you mean “%s”?"::formatted).orElse(otherwise);
    return new Fault(type, parameter, wrong + " " + advice, nearest);
  }

  Fault withNearest(Optional<String> name) {
    return new Fault(type, parameter, message, name);
  }

  ParameterError error() {
    return new ParameterError(parameter, message);
  }
}
