package org.hedgerow.web.review;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Collections;
import java.util.List;
import javax.imageio.ImageIO;
import org.hedgerow.web.testing.ReviewServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures that people send, over HTTP. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class UploadsTest {
  private static final String PICTURES = "/api/v1/pictures";
  private static final String SVG =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 100\"><rect width=\"100\" height=\"100\" fill=\"#a00\"/>%s</svg>";

  private ReviewServer server = ReviewServer.start();

  @AfterAll
  void stop() {
    server.close();
  }

  private static byte[] drawn(String format) throws Exception {
    BufferedImage image = new BufferedImage(200, 100, BufferedImage.TYPE_INT_RGB);
    image.createGraphics().setColor(Color.GREEN);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, format, bytes);
    return bytes.toByteArray();
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg"})
  void keepsAPictureAndShowsIt(String format) throws Exception {
    HttpResponse<String> sent = server.sendBytes("mei", PICTURES, drawn(format), "image/" + format);
    assertThat(sent.statusCode()).as(sent.body()).isEqualTo(201);
    assertThat(server.json(sent).path("width").asInt()).isEqualTo(200);
    String href = server.json(sent).path("href").asText();
    assertThat(sent.headers().firstValue("Location")).hasValue(href);
    HttpResponse<byte[]> shown = server.bytes("mei", href);
    assertThat(shown.headers().firstValue("Content-Type")).hasValue("image/" + format);
    assertThat(shown.headers().firstValue("Content-Security-Policy").orElse(""))
        .contains("default-src 'none'", "sandbox");
    assertThat(shown.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
    assertThat(ImageIO.read(new ByteArrayInputStream(shown.body())).getHeight()).isEqualTo(100);
    assertThat(server.get("nobody", href).statusCode()).isEqualTo(401);
  }

  @Test
  void aPictureGoesToItsWord() throws Exception {
    HttpResponse<String> sent =
        server.send("mei", "POST", PICTURES, SVG.formatted(""), "Content-Type", "image/svg+xml");
    String upload = server.json(sent).path("upload").asText();
    assertThat(server.get("mei", "/api/v1/uploads/" + upload).body()).startsWith("<svg ");
    String proposal =
        """
        {"proposal": {"kind": "picture", "spelling": "boat", "upload": "%s", "title": "A red square",
          "author": "Mei", "licence": "CC0-1.0"}, "submit": true}
        """
            .formatted(upload);
    int id = server.made(server.send("mei", "POST", "/api/v1/contributions", proposal));
    HttpResponse<String> approved =
        server.send(
            "rosa",
            "POST",
            "/api/v1/contributions/%d/decisions".formatted(id),
            "{\"decision\": \"approve\"}",
            "If-Match",
            "\"1\"");
    assertThat(approved.statusCode()).as(approved.body()).isEqualTo(200);
  }

  /** Who else sent the same picture sees their own, and not hers. */
  @Test
  void belongsToItsOwnerUntilItIsSubmitted() throws Exception {
    String picture = SVG.formatted("<rect width=\"7\" height=\"7\" fill=\"#00a\"/>");
    String mine = sent("mei", picture);
    String his = sent("omar", picture);
    assertThat(sent("mei", picture)).isEqualTo(mine);
    assertThat(seenBy("mei", mine)).isEqualTo(200);
    for (String other : List.of("omar", "rosa", "tomasz")) {
      assertThat(seenBy(other, mine)).as(other).isEqualTo(404);
    }
    assertThat(seenBy("nobody", mine)).isEqualTo(401);
    assertThat(seenBy("omar", his)).isEqualTo(200);

    String proposal =
        """
        {"proposal": {"kind": "picture", "spelling": "goat", "upload": "%s", "title": "A square",
          "author": "Mei", "licence": "CC0-1.0"}}
        """
            .formatted(mine);
    int id = server.made(server.send("mei", "POST", "/api/v1/contributions", proposal));
    assertThat(seenBy("rosa", mine)).isEqualTo(404);
    server.send(
        "mei",
        "POST",
        "/api/v1/contributions/%d/submission".formatted(id),
        "",
        "If-Match",
        "\"1\"");
    assertThat(seenBy("rosa", mine)).isEqualTo(200);
    assertThat(seenBy("omar", mine)).isEqualTo(200);
    assertThat(seenBy("rosa", his)).isEqualTo(404);
    assertThat(seenBy("nobody", mine)).isEqualTo(401);
  }

  private String sent(String name, String picture) throws Exception {
    HttpResponse<String> sent =
        server.send(name, "POST", PICTURES, picture, "Content-Type", "image/svg+xml");
    return server.json(sent).path("upload").asText();
  }

  private int seenBy(String name, String upload) throws Exception {
    return server.bytes(name, "/api/v1/uploads/" + upload).statusCode();
  }

  @Test
  void takesTheOneFileOfAForm() throws Exception {
    HttpResponse<String> sent = form(drawn("png"), 1);
    assertThat(sent.statusCode()).as(sent.body()).isEqualTo(201);
    HttpResponse<String> two = form(drawn("png"), 2);
    assertThat(two.statusCode()).isEqualTo(400);
    assertThat(two.body()).contains("There are 2 files");
    assertThat(form(new byte[6_000_000], 1).statusCode()).isEqualTo(413);
  }

  private HttpResponse<String> form(byte[] file, int copies) throws Exception {
    ByteArrayOutputStream form = new ByteArrayOutputStream();
    for (int i = 0; i < copies; i++) {
      form.writeBytes(
          "--cut\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.png\"\r\n\r\n"
              .getBytes(UTF_8));
      form.writeBytes(file);
      form.writeBytes("\r\n".getBytes(UTF_8));
    }
    form.writeBytes("--cut--\r\n".getBytes(UTF_8));
    return server.sendBytes(
        "mei", PICTURES, form.toByteArray(), "multipart/form-data; boundary=cut");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "<image href=\"http://x.example/a.png\"/>",
        "<rect width=\"1\" height=\"1\" onclick=\"alert(1)\"/>",
        "<g"
      })
  void refusesWhatASvgMustNotHold(String inside) throws Exception {
    HttpResponse<String> answer =
        server.send(
            "mei", "POST", PICTURES, SVG.formatted(inside), "Content-Type", "image/svg+xml");
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(400);
    assertThat(answer.body()).contains("#unusable-picture");
  }

  @Test
  void refusesWhatIsNoPicture() throws Exception {
    assertThat(server.sendBytes("mei", PICTURES, new byte[0], "image/png").body())
        .contains("#unusable-picture");
    assertThat(server.sendBytes("mei", PICTURES, "GIF89a".getBytes(UTF_8), "image/png").body())
        .contains("#unusable-picture");
    assertThat(server.send("mei", "POST", PICTURES, "{}").statusCode()).isEqualTo(415);
    assertThat(form("no picture".getBytes(UTF_8), 1).body()).contains("#unusable-picture");
    assertThat(
            server
                .sendBytes("mei", PICTURES, "x".getBytes(UTF_8), "multipart/form-data")
                .statusCode())
        .isEqualTo(400);
    for (String id : new String[] {"x", "sent-0", "..%2F..%2Fetc", "%00"}) {
      assertThat(server.bytes("mei", "/api/v1/uploads/" + id).statusCode()).as(id).isIn(400, 404);
    }
  }

  /** By its length, before any of it has come. */
  @Test
  void refusesFiftyMegabytesUnread() throws Exception {
    URI address = server.request("mei", PICTURES).build().uri();
    String token =
        server.request("mei", PICTURES).build().headers().firstValue("Authorization").orElseThrow();
    try (Socket socket = new Socket(address.getHost(), address.getPort())) {
      OutputStream out = socket.getOutputStream();
      out.write(
          "POST %s HTTP/1.1\r\nHost: x\r\nAuthorization: %s\r\nContent-Type: image/png\r\nContent-Length: 50000000\r\n\r\n"
              .formatted(PICTURES, token)
              .getBytes(UTF_8));
      out.flush();
      BufferedReader answer =
          new BufferedReader(new InputStreamReader(socket.getInputStream(), UTF_8));
      assertThat(answer.readLine()).contains("413");
      socket.shutdownOutput(); // or the server would wait for the body that was announced
      assertThat(answer.lines().reduce("", String::concat)).contains("#body-too-large", "5 MB");
    }
  }

  /** Without a length, no more is read than may be kept. */
  @Test
  void refusesAStreamWithoutEnd() throws Exception {
    byte[] chunk = new byte[100_000];
    HttpResponse<String> answer =
        server
            .http()
            .send(
                server
                    .request("mei", PICTURES, "Content-Type", "image/png")
                    .POST(BodyPublishers.ofByteArrays(Collections.nCopies(60, chunk)))
                    .build(),
                BodyHandlers.ofString());
    assertThat(answer.statusCode()).isEqualTo(413);
  }
}
