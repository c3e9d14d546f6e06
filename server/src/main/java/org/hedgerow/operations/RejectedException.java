package org.hedgerow.operations;

import java.util.List;

/** Something can't be done as it was asked; nothing was changed. */
public final class RejectedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<FieldError> errors;

  /**
   * @param errors at least one
   */
  public RejectedException(List<FieldError> errors) {
    super(errors.get(0).message());
    this.errors = List.copyOf(errors);
  }

  public static RejectedException at(String field, String message) {
    return new RejectedException(List.of(new FieldError(field, message)));
  }

  /** At least one. */
  public List<FieldError> errors() {
    return errors;
  }

  public static void throwIfAny(List<FieldError> errors) {
    if (!errors.isEmpty()) {
      throw new RejectedException(errors);
    }
  }
}
