package org.hedgerow.web.problems;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/** The members of a problem in JSON, in their order. */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
record ProblemBody(
    String type, String title, int status, String detail, List<ParameterError> errors) {

  static ProblemBody of(Problem problem) {
    return new ProblemBody(
        problem.type().reference(),
        problem.type().title(),
        problem.status(),
        problem.detail(),
        problem.errors());
  }
}
