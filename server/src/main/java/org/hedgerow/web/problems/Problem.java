package org.hedgerow.web.problems;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Why a request isn't answered (RFC 9457).
 *
 * @param type what kind of problem it is
 * @param status HTTP status
 * @param detail what is wrong here and what to do, for a teacher
 * @param errors the parameters at error; often none
 * @param more members of its own, for programs; often none
 */
public record Problem(
    ProblemType type,
    int status,
    String detail,
    List<ParameterError> errors,
    Map<String, Object> more) {
  public Problem {
    errors = List.copyOf(errors);
    more = Collections.unmodifiableMap(new LinkedHashMap<>(more));
  }

  public Problem(ProblemType type, int status, String detail, List<ParameterError> errors) {
    this(type, status, detail, errors, Map.of());
  }

  public static Problem of(ProblemType type, String detail) {
    return new Problem(type, type.status(), detail, List.of());
  }

  /** One parameter at error, whose message is the detail too. */
  public static Problem at(ProblemType type, String parameter, String message) {
    return new Problem(
        type, type.status(), message, List.of(new ParameterError(parameter, message)));
  }

  /** A problem that somebody else found and gave only a status. */
  public static Problem ofStatus(int status, String detail) {
    return new Problem(ProblemType.ofStatus(status), status, detail, List.of());
  }

  /** The same with members of its own. */
  public Problem with(Map<String, Object> members) {
    return new Problem(type, status, detail, errors, members);
  }

  public ProblemException exception() {
    return new ProblemException(this);
  }
}
