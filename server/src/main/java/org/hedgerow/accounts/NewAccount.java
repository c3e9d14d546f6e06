package org.hedgerow.accounts;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.operations.FieldError;

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

  List<FieldError> errors() {
    List<FieldError> errors = new ArrayList<>();
    NameRules.nameFault(name).ifPresent(errors::add);
    NameRules.displayNameFault(displayName).ifPresent(errors::add);
    PasswordRules.error(password, name).ifPresent(errors::add);
    return List.copyOf(errors);
  }

  /** Keeps the password out of logs. */
  @Override
  public String toString() {
    return name;
  }
}
