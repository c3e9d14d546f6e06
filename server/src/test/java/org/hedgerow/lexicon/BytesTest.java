package org.hedgerow.lexicon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class BytesTest {

  @Test
  void cannotBeChanged() {
    byte[] content = {1, 2, 3};
    Bytes bytes = Bytes.of(content);
    content[0] = 9;
    bytes.toArray()[1] = 9;
    assertThat(bytes.toArray()).containsExactly(1, 2, 3);
  }

  @Test
  void areEqualByContent() {
    assertThat(Bytes.of(new byte[] {1})).isEqualTo(Bytes.of(new byte[] {1}));
    assertThat(Bytes.of(new byte[] {1})).isNotEqualTo(Bytes.of(new byte[] {2}));
    assertThat(Bytes.of(new byte[] {1})).hasSameHashCodeAs(Bytes.of(new byte[] {1}));
  }

  /** FIPS 180-4's example: the SHA-256 of abc. */
  @Test
  void haveAFingerprint() {
    assertThat(Bytes.of(new byte[] {'a', 'b', 'c'}).fingerprint()).isEqualTo("ba7816bf8f01");
  }

  @Test
  void makePicturesOfKnownTypesOnly() {
    assertThatThrownBy(
            () ->
                new Picture(
                    "p", "t", "a", "l", "h", "s", "v", "text/html", Bytes.of(new byte[] {'<'})))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
