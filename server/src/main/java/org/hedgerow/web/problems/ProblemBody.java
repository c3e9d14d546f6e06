package org.hedgerow.web.problems;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;

/** The members of a problem in JSON, in their order. */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ProblemBody(
    String type,
    String title,
    int status,
    String detail,
    List<ParameterError> errors,
    Map<String, Object> more) {

  public static ProblemBody of(Problem problem) {
    return new ProblemBody(
        problem.type().reference(),
        problem.type().title(),
        problem.status(),
        problem.detail(),
        problem.errors(),
        problem.more());
  }

  @Override
  @JsonAnyGetter
  public Map<String, Object> more() {
    return more;
  }
}
