package org.hedgerow.web.query;

import static java.util.stream.Collectors.joining;

import java.util.Comparator;
import java.util.List;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;

/** A question that can't be answered as it stands, with everything that is wrong with it. */
public final class InvalidQueryException extends ProblemException {
  private static final long serialVersionUID = 1L;

  private final transient List<ValidationError> errors;

  /**
   * @param errors at least one
   */
  InvalidQueryException(List<ValidationError> errors) {
    super(problem(errors));
    this.errors = List.copyOf(errors);
  }

  public List<ValidationError> errors() {
    return errors;
  }

  /** Of the type of the first error, those in the question itself before what it asks for. */
  private static Problem problem(List<ValidationError> errors) {
    List<ValidationError> sorted =
        errors.stream().sorted(Comparator.comparing(error -> error.type().status())).toList();
    ValidationError first = sorted.get(0);
    return new Problem(
        first.type(),
        first.type().status(),
        sorted.stream().map(ValidationError::message).collect(joining(" ")),
        sorted.stream().map(ValidationError::error).toList());
  }
}
