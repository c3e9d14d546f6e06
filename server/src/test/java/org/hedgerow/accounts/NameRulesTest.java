package org.hedgerow.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NameRulesTest {
  @ParameterizedTest
  @ValueSource(strings = {"", "a", "a b", "a\tb", "<b>", "a/b", "a\u0000b", "a\u202Eb", "a,b"})
  void refusesNames(String name) {
    assertThat(NameRules.nameFault(NameRules.normalName(name))).isPresent();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Rosa", "rosa.lee", "o'neill", "rosa@school.example", "नीलम", "نور", "李明"})
  void takesNames(String name) {
    assertThat(NameRules.nameFault(NameRules.normalName(name))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "a\u202Eb", "a\u2066b", "a\u0007b"})
  void refusesDisplayNames(String name) {
    assertThat(NameRules.displayNameFault(NameRules.normalDisplayName(name))).isPresent();
  }

  @ParameterizedTest
  @ValueSource(strings = {"R", "Rosa Lee", "<script>alert(1)</script>", "نور الهدى", "क्\u200Dष"})
  void takesDisplayNames(String name) {
    assertThat(NameRules.displayNameFault(NameRules.normalDisplayName(name))).isEmpty();
  }

  @Test
  void refusesNamesThatAreTooLong() {
    assertThat(NameRules.nameFault("a".repeat(40))).isEmpty();
    assertThat(NameRules.nameFault("a".repeat(41))).isPresent();
    assertThat(NameRules.displayNameFault("a".repeat(80))).isEmpty();
    assertThat(NameRules.displayNameFault("a".repeat(81))).isPresent();
  }
}
