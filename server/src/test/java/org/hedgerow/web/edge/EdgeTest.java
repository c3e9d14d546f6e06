package org.hedgerow.web.edge;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.util.ArrayList;
import java.util.List;
import org.hedgerow.web.HealthRoutes;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.Routes;
import org.hedgerow.web.SettableHealth;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Clients that send or read slowly, or send too much; and the headers of every answer. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(60)
class EdgeTest {
  private static final int SLOW_CLIENTS = 200;
  private static final String HEALTH = "GET /health/live HTTP/1.1\r\nHost: a\r\n%s\r\n";
  private static final String TEXT = "oa, boat, goat. ".repeat(200);

  private final WebServer server = server();
  private final List<Socket> sockets = new ArrayList<>();

  private static WebServer server() {
    JsonProblems problems = new JsonProblems(JsonMapping.mapper());
    return new WebServer(
        new ListeningAddress("127.0.0.1", 0),
        JsonMapping.mapper(),
        new SimpleMeterRegistry(),
        new ErrorMapping(problems, problems),
        List.of(new HealthRoutes(new SettableHealth()), EdgeTest::routes));
  }

  private static void routes(Routes routes) {
    JsonBody bodies = new JsonBody(JsonMapping.mapper());
    routes.post("/checks", context -> context.json(bodies.read(context, List.class)));
    routes.get("/large", context -> context.result(new byte[300_000]));
    routes.get("/text", context -> context.header("ETag", "\"7\"").result(TEXT));
    routes.get("/same", context -> context.header("ETag", "\"7\"").status(304));
    routes.get("/words/{word}", context -> context.result(context.pathParam("word")));
  }

  @BeforeAll
  void start() {
    server.start();
  }

  @AfterEach
  void hangUp() throws IOException {
    for (Socket socket : sockets) {
      socket.close();
    }
    sockets.clear();
  }

  @AfterAll
  void stop() {
    server.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "POST /checks HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 100000\r\n\r\n[",
        "POST /checks HTTP/1.1\r\nHost: a\r\nTransfer-Encoding: chunked\r\n\r\n1\r\n[\r\n",
        "GET /health/live HTTP/1.1\r\nHost: a\r\nX-Slow: ",
        "GET /large HTTP/1.1\r\nHost: a\r\n\r\n"
      })
  void slowClientsKeepNobodyWaiting(String beginning) throws Exception {
    for (int i = 0; i < SLOW_CLIENTS; i++) {
      send(beginning);
    }
    ask(HEALTH.formatted(""));
    for (int i = 0; i < 5; i++) {
      long start = System.nanoTime();
      assertThat(ask(HEALTH.formatted(""))).startsWith("HTTP/1.1 200");
      assertThat(System.nanoTime() - start).as("nanoseconds").isLessThan(2_000_000_000L);
    }
  }

  @Test
  void aBodyMayComeInPieces() throws Exception {
    Socket socket =
        send(
            "POST /checks HTTP/1.1\r\nHost: a\r\nConnection: close\r\nContent-Type: application/json\r\nContent-Length: 10\r\n\r\n");
    for (String piece : List.of("[\"o", "a\",", "", "\"k\"]")) {
      Thread.sleep(20);
      socket.getOutputStream().write(piece.getBytes(UTF_8));
    }
    assertThat(rest(socket)).startsWith("HTTP/1.1 200").endsWith("[\"oa\",\"k\"]");
  }

  @ParameterizedTest
  @CsvSource({
    "application/json,, 1000001, a million bytes",
    "application/x-www-form-urlencoded,, 1000001, a million bytes",
    "multipart/form-data; boundary=x,, 1000001, a million bytes",
    "multipart/form-data; boundary=x, Authorization: Bearer x, 9000000, at most 5 MB",
    "image/png, Cookie: hedgerow-session=x, 9000000, at most 5 MB"
  })
  void refusesUnreadWhatSaysThatItIsTooLarge(String type, String header, int length, String says)
      throws Exception {
    String more = header == null ? "" : header + "\r\n";
    Socket socket =
        send(
            "POST /checks HTTP/1.1\r\nHost: a\r\nContent-Type: %s\r\nContent-Length: %d\r\n%s\r\n"
                .formatted(type, length, more));
    socket.shutdownOutput();
    String answer = rest(socket);
    assertThat(answer).startsWith("HTTP/1.1 413").contains("#body-too-large", says);
    assertThat(answer).contains("Connection: close");
  }

  /** Closing the connection too early would show the client a reset instead of the answer. */
  @Test
  void whoStillSendsWhatIsTooLargeSeesTheAnswer() throws Exception {
    byte[] piece = new byte[20_000];
    for (int client = 0; client < 10; client++) {
      Socket socket =
          send(
              "POST /checks HTTP/1.1\r\nHost: a\r\nContent-Length: %d\r\n\r\n"
                  .formatted(2_000_000));
      for (int sent = 0; sent < 2_000_000; sent += piece.length) {
        socket.getOutputStream().write(piece);
      }
      assertThat(rest(socket)).startsWith("HTTP/1.1 413").contains("#body-too-large");
    }
  }

  @Test
  void refusesAStreamOnceItIsTooLarge() throws Exception {
    Socket socket = send("POST /checks HTTP/1.1\r\nHost: a\r\nTransfer-Encoding: chunked\r\n\r\n");
    OutputStream out = socket.getOutputStream();
    byte[] chunk = ("4000\r\n" + " ".repeat(0x4000) + "\r\n").getBytes(UTF_8);
    for (int i = 0; i < 80; i++) {
      out.write(chunk);
    }
    out.write("0\r\n\r\n".getBytes(UTF_8));
    assertThat(rest(socket)).startsWith("HTTP/1.1 413").contains("#body-too-large");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /words/%u0041     | 400
          /words/100%       | 400
          /words/%zz        | 400
          /words/%00        | 400
          /words/%C3        | 400
          /words/%FF%FE     | 400
          /words/a%2Fb      | 200
          /words/%C3%A9     | 200
          /words/a;b=c      | 200
          /words/../words/a | 404
          """)
  void aPathIsEncodedText(String path, int status) throws Exception {
    String answer = ask("GET %s HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n".formatted(path));
    assertThat(answer).startsWith("HTTP/1.1 " + status);
    if (status == 400) {
      assertThat(answer).contains("/docs/problems#bad-request", "nosniff");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "application/json; charset=zz, 415",
    "application/json; charset=, 415",
    "application/json;charset=\"?\", 415",
    "application/json; charset=utf-8, 200",
    "application/json; charset=UTF8, 200",
    "application/json; charset=iso-8859-1, 200",
    "text/csv; charset=zz, 415"
  })
  void aBodyIsInAKnownCharacterSet(String type, int status) throws Exception {
    String answer =
        ask(
            "POST /checks HTTP/1.1\r\nHost: a\r\nConnection: close\r\nContent-Type: %s\r\nContent-Length: 4\r\n\r\n[\"\"]"
                .formatted(type));
    assertThat(answer).startsWith("HTTP/1.1 " + status);
  }

  /** Whatever refuses a request: the parser, the edge, a route or nobody. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          400 | GET / HTTP/1.1~no header~~
          400 | GET /%00 HTTP/1.1~Host: a~Connection: close~~
          400 | GET / HTTP/1.1~Host: a~Host: b~Connection: close~~
          405 | DELETE /health/live HTTP/1.1~Host: a~Connection: close~~
          404 | GET /nowhere HTTP/1.0~~
          413 | POST /checks HTTP/1.1~Host: a~Content-Length: 99999999~~
          505 | GET / HTTP/7.1~Host: a~~
          """)
  void everyRefusalIsAProblemWithTheHeadersOfAll(int status, String request) throws Exception {
    String answer = ask(request.replace("~", "\r\n"));
    assertThat(answer)
        .startsWith("HTTP/1.1 " + status)
        .contains(
            "Content-Type: application/problem+json",
            "X-Content-Type-Options: nosniff",
            "Content-Security-Policy: frame-ancestors 'none'",
            "Referrer-Policy: same-origin",
            "Cache-Control: no-store",
            "\"detail\":\"");
  }

  @Test
  void saysWhatToDoAboutAddressesAndHeadersThatAreTooLong() throws Exception {
    assertThat(ask("GET /%s HTTP/1.1\r\nHost: a\r\n\r\n".formatted("a".repeat(20_000))))
        .startsWith("HTTP/1.1 414")
        .contains("#address-too-long", "nosniff", "longer than 8,000");
    assertThat(ask(HEALTH.formatted("X-Long: " + "a".repeat(20_000) + "\r\n")))
        .startsWith("HTTP/1.1 431")
        .contains("#headers-too-large", "nosniff", "cookies");
  }

  @Test
  void whatIsCompressedHasATagAndALengthOfItsOwn() throws Exception {
    assertThat(text("GET", ""))
        .contains("ETag: \"7\"\r\n", "Content-Length: 3200", "Vary: Accept-Encoding");
    String compressed = text("GET", "Accept-Encoding: br, gzip\r\n");
    assertThat(compressed)
        .contains("ETag: \"7-gzip\"", "Content-Encoding: gzip", "Vary: Accept-Encoding")
        .doesNotContain("Content-Length: 3200");
    assertThat(text("GET", "Accept-Encoding: gzip;q=0\r\n")).doesNotContain("Content-Encoding");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Accept-Encoding: gzip\r\n"})
  void headSaysWhatGetSays(String header) throws Exception {
    String head = text("HEAD", header);
    assertThat(head).endsWith("\r\n\r\n").contains("Content-Length");
    assertThat(withoutDate(head)).isEqualTo(withoutDate(headersOf(text("GET", header))));
  }

  @Test
  void aNotModifiedAnswerNamesTheTagOfWhatTheAskerHas() throws Exception {
    String plain =
        ask("GET /same HTTP/1.1\r\nHost: a\r\nConnection: close\r\nIf-None-Match: \"7\"\r\n\r\n");
    assertThat(plain)
        .startsWith("HTTP/1.1 304")
        .contains("ETag: \"7\"\r\n", "Vary: Accept-Encoding")
        .doesNotContain("\r\nContent-Type", "\r\nContent-Length");
    assertThat(
            ask(
                "GET /same HTTP/1.1\r\nHost: a\r\nConnection: close\r\nIf-None-Match: W/\"7-gzip\"\r\n\r\n"))
        .contains("ETag: \"7-gzip\"\r\n");
  }

  private String text(String method, String header) throws IOException {
    return ask(
        "%s /text HTTP/1.1\r\nHost: a\r\nConnection: close\r\n%s\r\n".formatted(method, header));
  }

  private static String headersOf(String answer) {
    return answer.substring(0, answer.indexOf("\r\n\r\n") + 4);
  }

  private static String withoutDate(String headers) {
    return headers.replaceAll("Date: .*\r\n", "");
  }

  private Socket send(String beginning) throws IOException {
    Socket socket = new Socket();
    socket.setReceiveBufferSize(2_000);
    socket.setSoTimeout(20_000);
    socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), server.port()));
    sockets.add(socket);
    socket.getOutputStream().write(beginning.getBytes(UTF_8));
    return socket;
  }

  private String ask(String request) throws IOException {
    String once =
        request.contains("Connection:")
            ? request
            : request.replaceFirst("\r\nHost: a", "\r\nHost: a\r\nConnection: close");
    Socket socket = send(once);
    socket.shutdownOutput(); // or the server would wait for the body that was announced
    return rest(socket);
  }

  private static String rest(Socket socket) throws IOException {
    return new String(socket.getInputStream().readAllBytes(), UTF_8);
  }
}
