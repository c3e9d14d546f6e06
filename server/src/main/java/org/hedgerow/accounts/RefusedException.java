package org.hedgerow.accounts;

import java.util.List;

/** Something can't be done as it was asked; nothing was changed. */
public final class RefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<AccountFault> faults;

  RefusedException(List<AccountFault> faults) {
    super(faults.get(0).message());
    this.faults = List.copyOf(faults);
  }

  static RefusedException at(String field, String message) {
    return new RefusedException(List.of(new AccountFault(field, message)));
  }

  /** At least one. */
  public List<AccountFault> faults() {
    return faults;
  }

  static void throwIfAny(List<AccountFault> faults) {
    if (!faults.isEmpty()) {
      throw new RefusedException(faults);
    }
  }
}
