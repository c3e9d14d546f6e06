package org.hedgerow.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NetworkTest {
  @ParameterizedTest
  @CsvSource({
    "192.0.2.7, 192.0.2.7",
    "192.0.2.7:4711, 192.0.2.7",
    "::ffff:192.0.2.7, 192.0.2.7",
    "2001:db8:0:1:aaaa::1, 20010db800000001/64",
    "2001:db8:0:1:bbbb::2, 20010db800000001/64",
    "[2001:db8:0:1::2]:443, 20010db800000001/64",
    "2001:db8:0:2::1, 20010db800000002/64"
  })
  void countsIpv6ByTheFirst64Bits(String address, String network) {
    assertThat(Network.of(address)).isEqualTo(network);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "unknown", "zz:zz", "example.org:80", "[", "::1]"})
  void takesAnythingElseAsItIs(String text) {
    assertThat(Network.of(text)).isEqualTo(text);
  }
}
