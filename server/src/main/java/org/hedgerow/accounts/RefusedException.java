package org.hedgerow.accounts;

import java.util.List;

/** Something can't be done as it was asked; nothing was changed. */
public final class RefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<FieldFault> faults;

  /**
   * @param faults at least one
   */
  public RefusedException(List<FieldFault> faults) {
    super(faults.get(0).message());
    this.faults = List.copyOf(faults);
  }

  static RefusedException at(String field, String message) {
    return new RefusedException(List.of(new FieldFault(field, message)));
  }

  /** At least one. */
  public List<FieldFault> faults() {
    return faults;
  }

  public static void throwIfAny(List<FieldFault> faults) {
    if (!faults.isEmpty()) {
      throw new RefusedException(faults);
    }
  }
}
