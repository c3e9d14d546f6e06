package org.hedgerow.accounts;

import java.util.ArrayList;
import java.util.List;

/**
 * What somebody who takes up an invitation says of themselves, as it was typed.
 *
 * @param name to sign in with
 * @param displayName what others see
 */
public record NewAccount(String name, String displayName, String password) {
  public NewAccount {
    name = NameRules.normalName(name);
    displayName = NameRules.normalDisplayName(displayName);
  }

  List<FieldFault> faults() {
    List<FieldFault> faults = new ArrayList<>();
    NameRules.nameFault(name).ifPresent(faults::add);
    NameRules.displayNameFault(displayName).ifPresent(faults::add);
    PasswordRules.fault(password, name).ifPresent(faults::add);
    return List.copyOf(faults);
  }

  /** Keeps the password out of logs. */
  @Override
  public String toString() {
    return name;
  }
}
