package org.hedgerow.web.problems;

import java.util.List;

/**
 * Why a request isn't answered (RFC 9457).
 *
 * @param type what kind of problem it is
 * @param status HTTP status
 * @param detail what is wrong here and what to do, for a teacher
 * @param errors the parameters at fault; often none
 */
public record Problem(ProblemType type, int status, String detail, List<ParameterError> errors) {
  public Problem {
    errors = List.copyOf(errors);
  }

  public static Problem of(ProblemType type, String detail) {
    return new Problem(type, type.status(), detail, List.of());
  }

  /** One parameter at fault, whose message is the detail too. */
  public static Problem at(ProblemType type, String parameter, String message) {
    return new Problem(
        type, type.status(), message, List.of(new ParameterError(parameter, message)));
  }

  static Problem ofStatus(int status, String detail) {
    return new Problem(ProblemType.ofStatus(status), status, detail, List.of());
  }

  public ProblemException exception() {
    return new ProblemException(this);
  }
}
