package org.hedgerow.web.query;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.web.problems.ProblemType;

/** Collects the validation errors of one request. Not thread-safe. */
public final class ValidationErrors {

  /** A client may send thousands of wrong parameters; nobody would read about them all. */
  private static final int MAX = 20;

  private final List<ValidationError> errors = new ArrayList<>();
  private final ProblemType general;

  private ValidationErrors(ProblemType general) {
    this.general = general;
  }

  /** For a question in the query of an address. */
  public static ValidationErrors ofQuery() {
    return new ValidationErrors(ProblemType.INVALID_PARAMETER);
  }

  /** For a question in a body. */
  public static ValidationErrors ofBody() {
    return new ValidationErrors(ProblemType.INVALID_BODY);
  }

  /** Adds an error that has no type of its own. */
  public void invalid(String parameter, String message) {
    add(ValidationError.of(general, parameter, message));
  }

  void invalid(String parameter, String message, Optional<String> nearest) {
    add(new ValidationError(general, parameter, message, nearest));
  }

  public void add(ValidationError error) {
    if (errors.size() < MAX) {
      errors.add(error);
    }
  }

  public boolean isEmpty() {
    return errors.isEmpty();
  }

  public List<ValidationError> list() {
    return List.copyOf(errors);
  }

  /**
   * @throws InvalidQueryException if there are any
   */
  public void throwIfAny() {
    if (!errors.isEmpty()) {
      throw new InvalidQueryException(errors);
    }
  }
}
