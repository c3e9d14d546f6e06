package org.hedgerow.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class Argon2Test {
  private final Argon2 argon2 = new Argon2();

  /** The figures of OWASP's Password Storage Cheat Sheet. */
  @Test
  void saysItsFigures() {
    assertThat(argon2.of("wild cherry")).startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
  }

  @Test
  void fitsItsPasswordAlone() {
    String hash = argon2.of("wild cherry");
    assertThat(argon2.fits("wild cherry", hash)).isTrue();
    assertThat(argon2.fits("wild cherrY", hash)).isFalse();
    assertThat(argon2.fits("", hash)).isFalse();
  }

  @Test
  void isOtherEachTime() {
    assertThat(argon2.of("wild cherry")).isNotEqualTo(argon2.of("wild cherry"));
  }

  @Test
  void readsOtherFigures() {
    // A test vector of the reference implementation (phc-winner-argon2, test.c), from memory.
    String other =
        "$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc";
    assertThat(argon2.fits("password", other)).isTrue();
    assertThat(argon2.fits("passw0rd", other)).isFalse();
  }

  @Test
  void takesLettersHoweverTheyWereComposed() {
    assertThat(argon2.fits("zoe\u0308 and rené", argon2.of("zo\u00EB and rene\u0301"))).isTrue();
  }
}
