package org.hedgerow.accounts;

import java.util.Locale;
import java.util.Optional;

/**
 * What a password must be: long enough, and not the first that anybody would try. It needs no
 * capitals, digits or signs, which only make passwords hard to remember (NIST SP 800-63B, 5.1.1.2).
 */
final class PasswordRules {
  static final int SHORTEST = 8;
  static final int LONGEST = 200;

  private PasswordRules() {}

  /** What is wrong with it, if anything. */
  static Optional<FieldFault> fault(String password, String accountName) {
    int length = password.codePointCount(0, password.length());
    String plain = password.strip().toLowerCase(Locale.ROOT);
    if (length < SHORTEST || plain.isEmpty()) {
      return wrong(
          "A password needs at least " + SHORTEST + " characters. Several words are best.");
    }
    if (length > LONGEST) {
      return wrong("A password may have at most " + LONGEST + " characters.");
    }
    if (plain.equals(accountName.toLowerCase(Locale.ROOT))) {
      return wrong("The password is the account's name. Choose another.");
    }
    return CommonPasswords.bundled().contains(password)
        ? wrong("That is among the passwords that are tried first. Choose another.")
        : Optional.empty();
  }

  private static Optional<FieldFault> wrong(String message) {
    return Optional.of(new FieldFault("password", message));
  }
}
