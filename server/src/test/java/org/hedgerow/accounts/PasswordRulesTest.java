package org.hedgerow.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordRulesTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"", "x", "1234567", "        ", "password", "PASSWORD1", "12345678", "rosamunde"})
  void refuses(String password) {
    assertThat(PasswordRules.error(password, "rosamunde")).isPresent();
  }

  @ParameterizedTest
  @ValueSource(strings = {"wild cherry", "ƒœπ∑ß∂∫µ", "🌳🌲🌳🌲🌳🌲🌳🌲", "no capitals, no digits"})
  void takes(String password) {
    assertThat(PasswordRules.error(password, "rosamunde")).isEmpty();
  }

  /** From memory, each often met in published lists; and what people of a place like ours try. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Iloveyou",
        " 123456789 ",
        "qwertyuiop",
        "1q2w3e4r",
        "trustno1",
        "PassW0rd",
        "ｐａｓｓｗｏｒｄ",
        "football1",
        "michelle",
        "hedgerow123",
        "Phonics2026",
        "teacher1!"
      })
  void refusesWhatIsTriedFirst(String password) {
    assertThat(PasswordRules.error(password, "rosamunde"))
        .hasValueSatisfying(error -> assertThat(error.message()).contains("tried first"));
  }

  /** OWASP ASVS 4.0.3, 2.1.7 wants three thousand of them at least. */
  @Test
  void knowsManyCommonPasswords() {
    assertThat(CommonPasswords.bundled().size()).isGreaterThan(10_000);
    assertThat(CommonPasswords.bundled().contains("")).isFalse();
  }

  /** In code points: a picture counts once, though it takes two chars. */
  @Test
  void countsWhatPeopleSee() {
    assertThat(PasswordRules.error("🌳".repeat(7), "rosa")).isPresent();
    assertThat(PasswordRules.error("🌳".repeat(200), "rosa")).isEmpty();
    assertThat(PasswordRules.error("🌳".repeat(201), "rosa")).isPresent();
    assertThat(PasswordRules.error("a".repeat(10_000), "rosa")).isPresent();
  }
}
