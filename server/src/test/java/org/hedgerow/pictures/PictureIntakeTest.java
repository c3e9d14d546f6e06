package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told from the first bytes of a file. */
class PictureIntakeTest {

  private final PictureIntake intake = new PictureIntake();

  @ParameterizedTest
  @CsvSource({
    "GIF89a/*<svg onload=alert(1)>*/=1;, GIF",
    "'RIFF    WEBPVP8 <script>', WebP",
    "'    ftypheic', HEIC",
    "'    ftypavif', AVIF",
    "%PDF-1.7, PDF",
    "BM<html>, BMP",
    "hello, only PNG",
    "\u0089PNG<html>, only PNG",
    "\u00ff\u00d8<html>, only PNG"
  })
  void namesWhatItCannotTake(String content, String named) {
    assertThatThrownBy(() -> intake.take(content.getBytes(ISO_8859_1)))
        .isInstanceOf(UnusablePictureException.class)
        .hasMessageContaining(named)
        .hasMessageContaining("as PNG or JPEG");
  }

  @Test
  void asksForAFile() {
    assertThatThrownBy(() -> intake.take(new byte[0])).hasMessageContaining("empty");
  }

  @Test
  void readsNoMoreThanFiveMegabytes() {
    assertThatThrownBy(() -> intake.take(new byte[PictureIntake.MAX_BYTES + 1]))
        .isInstanceOf(UnusablePictureException.class)
        .hasMessageContaining("5 MB");
    assertThatThrownBy(() -> intake.take(new byte[PictureIntake.MAX_BYTES]))
        .hasMessageContaining("only PNG");
  }
}
