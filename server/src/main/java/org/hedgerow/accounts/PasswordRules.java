package org.hedgerow.accounts;

import java.util.Locale;
import java.util.Optional;
import org.hedgerow.operations.FieldError;

/**
 * What a password must be: long enough, and not the first that anybody would try. It needs no
 * capitals, digits or signs, which only make passwords hard to remember (NIST SP 800-63B, 5.1.1.2).
 */
final class PasswordRules {
  static final int MIN_LENGTH = 8;
  static final int MAX_LENGTH = 200;

  private PasswordRules() {}

  /** What is wrong with it, if anything. */
  static Optional<FieldError> error(String password, String accountName) {
    int length = password.codePointCount(0, password.length());
    String plain = password.strip().toLowerCase(Locale.ROOT);
    if (length < MIN_LENGTH || plain.isEmpty()) {
      return wrong(
          "A password needs at least " + MIN_LENGTH + " characters. Several words are best.");
    }
    if (length > MAX_LENGTH) {
      return wrong("A password may have at most " + MAX_LENGTH + " characters.");
    }
    if (plain.equals(accountName.toLowerCase(Locale.ROOT))) {
      return wrong("The password is the account's name. Choose another.");
    }
    return CommonPasswords.bundled().contains(password)
        ? wrong("That is among the passwords that are tried first. Choose another.")
        : Optional.empty();
  }

  private static Optional<FieldError> wrong(String message) {
    return Optional.of(new FieldError("password", message));
  }
}
