package org.hedgerow.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What may be configured as the address of a server. */
class PublicAddressTest {
  @ParameterizedTest
  @CsvSource({
    "https://words.example, https://words.example",
    "https://Words.Example/, https://words.example",
    "http://10.0.0.7:8080, http://10.0.0.7:8080",
    "http://[::1]:8080/, http://[::1]:8080"
  })
  void takesAnOrigin(String address, String origin) {
    assertThat(PublicAddress.origin(address)).hasValue(origin);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "words.example",
        "ftp://words.example",
        "https://words.example/hedgerow",
        "https://ada@words.example",
        "https://words.example?a",
        "https://words.example/#a",
        "https://",
        "https:// words",
        "javascript:alert(1)"
      })
  void refusesAnythingElse(String address) {
    assertThat(PublicAddress.origin(address)).isEmpty();
  }
}
