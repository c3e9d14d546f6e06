package org.hedgerow.web.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.List;
import javax.imageio.ImageIO;
import org.hedgerow.lexicon.Bytes;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.lexicon.Pictures;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.testing.ApiServer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures that people contributed, as they go out. */
class PictureServingTest {

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg"})
  void servesEachAsWhatItIs(String format) throws Exception {
    Bytes content = drawn(format);
    Lexicon lexicon =
        new Lexicon(
            1,
            SeededLexicon.get().accents(),
            List.of(),
            new Pictures(List.of(picture(format, content))));
    try (ApiServer server = ApiServer.start(Editions.only(lexicon))) {
      HttpResponse<byte[]> answer = server.bytes("/api/v1/pictures/drawn");
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(answer.body()).isEqualTo(content.toArray());
      assertThat(answer.headers().firstValue("Content-Type")).contains("image/" + format);
      assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
      assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
          .contains("default-src 'none'", "sandbox");
      String tag = answer.headers().firstValue("ETag").orElseThrow();
      assertThat(server.get("/api/v1/pictures/drawn", "If-None-Match", tag).statusCode())
          .isEqualTo(304);
      assertThat(server.get("/api/v1/pictures/drawn").statusCode()).isEqualTo(200);
    }
  }

  private static Picture picture(String format, Bytes content) {
    return new Picture(
        "drawn",
        "boat",
        "An Example",
        "CC BY 4.0",
        "https://creativecommons.org/licenses/by/4.0/",
        "own work",
        content.fingerprint(),
        "image/" + format,
        content);
  }

  private static Bytes drawn(String format) throws IOException {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(64, 64, BufferedImage.TYPE_INT_RGB), format, file);
    return Bytes.of(file.toByteArray());
  }
}
