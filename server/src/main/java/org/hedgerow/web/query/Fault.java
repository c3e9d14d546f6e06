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

  public static Fault of(ProblemType type, String parameter, String message) {
    return new Fault(type, parameter, message, Optional.empty());
  }

  /** With what is meant perhaps, if there is anything near, and else with what there is. */
  public static Fault unknown(
      ProblemType type,
      String parameter,
      String wrong,
      Optional<String> nearest,
      String otherwise) {
    String advice = nearest.map("Did you mean “%s”?"::formatted).orElse(otherwise);
    return new Fault(type, parameter, wrong + " " + advice, nearest);
  }

  /** As it stands in a problem. */
  public ParameterError error() {
    return new ParameterError(parameter, message);
  }
}
