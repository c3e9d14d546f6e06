package org.hedgerow.accounts;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What a password must be: long enough, and not the first that anybody would try. It needs no
 * capitals, digits or signs, which only make passwords hard to remember (NIST SP 800-63B, 5.1.1.2).
 */
final class PasswordRules {
  static final int SHORTEST = 8;
  static final int LONGEST = 200;

  /** The commonest of at least eight characters; from memory, no source. */
  private static final Set<String> COMMON =
      Set.of(
          "12345678",
          "123456789",
          "1234567890",
          "11111111",
          "00000000",
          "87654321",
          "12341234",
          "88888888",
          "password",
          "password1",
          "password12",
          "password123",
          "passw0rd",
          "p@ssw0rd",
          "p@ssword",
          "qwertyuiop",
          "qwertyui",
          "qwerty12",
          "qwerty123",
          "1q2w3e4r",
          "1q2w3e4r5t",
          "1qaz2wsx",
          "q1w2e3r4",
          "asdfghjk",
          "asdfghjkl",
          "zxcvbnm1",
          "abcd1234",
          "abc12345",
          "abcdefgh",
          "iloveyou",
          "iloveyou1",
          "sunshine",
          "sunshine1",
          "princess",
          "princess1",
          "football",
          "football1",
          "baseball",
          "baseball1",
          "superman",
          "starwars",
          "whatever",
          "trustno1",
          "letmein1",
          "welcome1",
          "welcome123",
          "changeme",
          "computer",
          "internet",
          "michelle",
          "jennifer",
          "jordan23",
          "corvette",
          "mercedes",
          "maverick",
          "admin123",
          "administrator",
          "password1234",
          "teacher1",
          "teacher123",
          "hedgerow",
          "hedgerow1",
          "hedgerow123");

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
    return COMMON.contains(plain)
        ? wrong("That is among the passwords that are tried first. Choose another.")
        : Optional.empty();
  }

  private static Optional<FieldFault> wrong(String message) {
    return Optional.of(new FieldFault("password", message));
  }
}
