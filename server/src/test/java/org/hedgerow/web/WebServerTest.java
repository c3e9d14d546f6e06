package org.hedgerow.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.ForbiddenResponse;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.io.IOException;
import java.lang.Thread.UncaughtExceptionHandler;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slf4j.LoggerFactory;

/**
 * What every route can rely on: health, problems in place of Javalin's own answers, an orderly
 * stop.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WebServerTest {
  private final ObjectMapper mapper = JsonMapping.mapper();
  private final SettableHealth health = new SettableHealth();
  private final CountDownLatch slowRequestIsIn = new CountDownLatch(1);
  private final CountDownLatch slowRequestMayEnd = new CountDownLatch(1);
  private final HttpClient client = HttpClient.newHttpClient();
  private final Logger incidents = (Logger) LoggerFactory.getLogger(ErrorMapping.class);
  private WebServer server;

  record Checks(List<String> words, int limit) {}

  @BeforeAll
  void start() {
    incidents.setLevel(Level.OFF); // those that are caused here on purpose
    server = server(0);
    server.start();
  }

  @AfterAll
  void stop() {
    server.close();
    incidents.setLevel(null);
  }

  private WebServer server(int port) {
    return server(port, new JsonProblems(mapper));
  }

  private WebServer server(int port, JsonProblems problems) {
    PrometheusMeterRegistry meters = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    return new WebServer(
        new ListeningAddress("127.0.0.1", port),
        mapper,
        meters,
        new ErrorMapping(problems, problems),
        List.of(
            new HealthRoutes(health), new MetricsRoutes(meters, asker -> true), this::troubles));
  }

  private void troubles(Routes routes) {
    JsonBody bodies = new JsonBody(mapper);
    routes.post("/checks", context -> context.json(bodies.read(context, Checks.class)));
    routes.get("/echo/{text}", context -> context.result(context.pathParam("text")));
    routes.get("/forbidden", context -> forbid());
    routes.get("/number", context -> context.queryParamAsClass("n", Integer.class).get());
    routes.get("/fault", context -> fail("select secret from accounts"));
    routes.get("/fatal", context -> blow());
    routes.get("/exhausted", context -> exhaust());
    routes.get("/problem", context -> refuse());
    routes.get("/slow", context -> context.result(slowly()));
  }

  private static void forbid() {
    throw new ForbiddenResponse("<script>alert(1)</script>");
  }

  private static void fail(String message) {
    throw new IllegalStateException(message);
  }

  private static void blow() {
    throw new StackOverflowError("deep inside");
  }

  private static void exhaust() {
    throw new OutOfMemoryError("Java heap space");
  }

  private static void refuse() {
    throw Problem.at(ProblemType.INVALID_PARAMETER, "phonogram", "There is no phonogram zz.")
        .exception();
  }

  private String slowly() throws InterruptedException {
    slowRequestIsIn.countDown();
    slowRequestMayEnd.await();
    return "done";
  }

  @Test
  void isLiveAndReady() throws Exception {
    assertThat(get("/health/live").statusCode()).isEqualTo(200);
    assertThat(get("/health/ready").body()).isEqualTo("{\"status\":\"up\",\"writes\":\"up\"}");
    assertThat(get("/health/writes").body()).isEqualTo("{\"status\":\"up\"}");
  }

  @Test
  void isReadyForReadsWhereNothingCanBeStored() throws Exception {
    health.setTakesWrites(false);
    assertThat(get("/health/live").statusCode()).isEqualTo(200);
    assertThat(get("/health/ready").statusCode()).isEqualTo(200);
    assertThat(get("/health/ready").body()).contains("\"writes\":\"down\"");
    assertProblem(get("/health/writes"), 503, "/docs/problems#unavailable");
    assertThat(get("/health/writes").headers().firstValue("Retry-After")).contains("5");
    assertThat(send(request("/health/writes").method("HEAD", BodyPublishers.noBody())).statusCode())
        .isEqualTo(503);
    health.setTakesWrites(true);
  }

  @Test
  void isNotLiveWhenAChangeIsStuck() throws Exception {
    health.setStuck(true);
    assertProblem(get("/health/live"), 503, "/docs/problems#unavailable");
    assertThat(get("/health/ready").statusCode()).isEqualTo(200);
    health.setStuck(false);
  }

  @Test
  void measuresRequestsByRouteAndNotByAddress() throws Exception {
    get("/echo/one");
    get("/echo/two");
    get("/nowhere");
    assertThat(get("/metrics").body())
        .contains("{method=\"GET\",route=\"/echo/{text}\",status=\"200\"} 2")
        .contains("{method=\"GET\",route=\"none\",status=\"404\"} 1");
  }

  @ParameterizedTest
  @CsvSource({
    "/nowhere, 404, /docs/problems#not-found",
    "/health/LIVE, 404, /docs/problems#not-found",
    "/problem, 400, /docs/problems#invalid-parameter",
    "/forbidden, 403, /docs/problems#bad-request",
    "/number?n=x, 400, /docs/problems#bad-request",
    "/number, 400, /docs/problems#bad-request",
    "/fault, 500, /docs/problems#internal-error",
    "/fatal, 500, /docs/problems#internal-error",
    "/%00, 400, /docs/problems#bad-request"
  })
  void answersTroubleWithAProblem(String path, int status, String type) throws Exception {
    for (String accept : List.of("application/json", "text/html", "*/*", "rubbish")) {
      assertProblem(send(request(path).header("Accept", accept)), status, type);
    }
  }

  @Test
  void namesTheParameterAtFault() throws Exception {
    JsonNode problem = mapper.readTree(get("/problem").body());
    assertThat(problem.at("/errors/0/parameter").asText()).isEqualTo("phonogram");
    assertThat(problem.at("/errors/0/detail").asText()).isEqualTo("There is no phonogram zz.");
    assertThat(problem.at("/detail").asText()).isEqualTo("There is no phonogram zz.");
  }

  @Test
  void handsExhaustedMemoryOverToTheProgram() throws Exception {
    CompletableFuture<Throwable> handedOver = new CompletableFuture<>();
    UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
    Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> handedOver.complete(failure));
    try {
      assertThat(get("/exhausted").statusCode()).isEqualTo(500);
      assertThat(handedOver.get(10, TimeUnit.SECONDS)).isInstanceOf(OutOfMemoryError.class);
    } finally {
      Thread.setDefaultUncaughtExceptionHandler(before);
    }
  }

  @Test
  void keepsWhatWentWrongInsideToItself() throws Exception {
    assertThat(get("/fault").body()).doesNotContain("secret").contains("incident");
    assertThat(get("/fatal").body()).doesNotContain("deep").contains("incident");
    assertThat(get("/forbidden").body()).doesNotContain("script");
  }

  @Test
  void saysWhatIsPossibleWhereAMethodIsNot() throws Exception {
    HttpResponse<String> response = send(request("/health/live").DELETE());
    assertProblem(response, 405, "/docs/problems#method-not-allowed");
    assertThat(response.headers().firstValue("Allow").orElse("")).contains("GET").contains("HEAD");
  }

  @Test
  void answersHeadersThatAreTooLarge() throws Exception {
    assertProblem(
        send(request("/health/live").header("X-Long", "a".repeat(20_000))),
        431,
        "/docs/problems#headers-too-large");
  }

  @Test
  void answersWhatIsNoHttp() throws Exception {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      socket
          .getOutputStream()
          .write("GET / HTTP/1.1\r\nno header\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 400").contains("/docs/problems#bad-request");
    }
  }

  @Test
  void readsAJsonBody() throws Exception {
    assertThat(post("{\"words\":[\"wool\"],\"limit\":3}").body())
        .isEqualTo("{\"words\":[\"wool\"],\"limit\":3}");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "wool", "{", "{\"words\":[\"a\"", "{'words':[]}", "\u0000"})
  void refusesABodyThatIsNoJson(String body) throws Exception {
    HttpResponse<String> response = post(body);
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(response.body()).doesNotContain("jackson").doesNotContain("hedgerow.web");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          null                             |
          []                               |
          5                                |
          "text"                           |
          {"words":[],"limit":1} x         |
          {"words":[],"limit":1} {}        |
          {"words":"wool","limit":1}       | words
          {"words":[["a"]],"limit":1}      | words[0]
          {"words":["a",{}],"limit":1}     | words[1]
          {"words":[],"limit":"many"}      | limit
          {"words":[],"limit":"3"}         | limit
          {"words":[],"limit":null}        | limit
          {"words":[],"limit":3e99}        | limit
          {"words":[],"limit":1,"limt":3}  | limt
          """)
  void refusesJsonOfAnotherShapeAndSaysWhere(String body, String place) throws Exception {
    HttpResponse<String> response = post(body);
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(response.body()).doesNotContain("java.").doesNotContain("org.hedgerow");
    if (place != null) {
      assertThat(mapper.readTree(response.body()).at("/errors/0/parameter").asText())
          .isEqualTo(place);
    }
  }

  @Test
  void refusesABodyThatIsTooLargeOrOfAnotherKind() throws Exception {
    assertProblem(
        post("[\"" + "a".repeat(1_100_000) + "\"]"), 413, "/docs/problems#body-too-large");
    assertProblem(
        send(request("/checks").POST(BodyPublishers.ofString("words=wool"))),
        415,
        "/docs/problems#unsupported-media-type");
  }

  @Test
  void takesABodyThatBreaksOffForNoIncident() throws Exception {
    ListAppender<ILoggingEvent> told = new ListAppender<>();
    told.start();
    incidents.setLevel(Level.ERROR);
    incidents.addAppender(told);
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      socket
          .getOutputStream()
          .write(
              "POST /checks HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 99\r\n\r\n{\"words\""
                  .getBytes(StandardCharsets.US_ASCII));
      socket.shutdownOutput();
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 400").contains("broke off");
    }
    incidents.detachAppender(told);
    incidents.setLevel(Level.OFF);
    assertThat(told.list).isEmpty();
  }

  /** What an error handler throws, Javalin hands to the same handler again. */
  @Test
  @Timeout(20)
  void endsARequestEvenIfTheErrorCannotBeTold() throws Exception {
    ObjectMapper broken =
        new ObjectMapper() {
          @Override
          public byte[] writeValueAsBytes(Object value) {
            throw new NoClassDefFoundError("gone from the disk");
          }
        };
    try (WebServer dying = server(0, new JsonProblems(broken))) {
      dying.start();
      for (String path : List.of("/fatal", "/fault", "/nowhere")) {
        assertThat(send(request(dying, path)).statusCode()).isEqualTo(500);
      }
      assertThat(send(request(dying, "/echo/still-here")).body()).isEqualTo("still-here");
    }
  }

  @Test
  @Timeout(30)
  void finishesWhatIsInFlightBeforeItStops() throws Exception {
    WebServer stopping = server(0);
    stopping.start();
    CompletableFuture<HttpResponse<String>> slow =
        client.sendAsync(request(stopping, "/slow").build(), BodyHandlers.ofString());
    slowRequestIsIn.await();
    int port = stopping.port();
    CompletableFuture<Void> stopped = CompletableFuture.runAsync(stopping::close);
    awaitNobodyLetIn(port);
    assertThat(stopped).isNotDone();
    slowRequestMayEnd.countDown();
    assertThat(slow.get().body()).isEqualTo("done");
    stopped.get();
  }

  private static void awaitNobodyLetIn(int port) throws InterruptedException {
    while (takesConnections(port)) {
      Thread.sleep(5);
    }
  }

  private static boolean takesConnections(int port) {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      return socket.isConnected();
    } catch (IOException refused) {
      return false;
    }
  }

  @Test
  void refusesAPortInUse() throws IOException {
    try (ServerSocket other = new ServerSocket()) {
      other.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
      int port = other.getLocalPort();
      assertThatThrownBy(() -> new ListeningAddress("127.0.0.1", port).requireFree())
          .isInstanceOf(ListeningException.class)
          .hasMessageContaining("Port " + port)
          .hasMessageContaining("in use");
      assertThatThrownBy(() -> server(port).start())
          .isInstanceOf(ListeningException.class)
          .hasMessageContaining("in use");
    }
  }

  private void assertProblem(HttpResponse<String> response, int status, String type)
      throws IOException {
    assertThat(response.statusCode()).isEqualTo(status);
    assertThat(response.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    JsonNode problem = mapper.readTree(response.body());
    assertThat(problem.path("type").asText()).isEqualTo(type);
    assertThat(problem.path("status").asInt()).isEqualTo(status);
    assertThat(problem.path("title").asText()).isNotBlank();
    assertThat(problem.path("detail").asText()).isNotBlank();
  }

  private HttpResponse<String> get(String path) throws Exception {
    return send(request(path));
  }

  private HttpResponse<String> post(String body) throws Exception {
    return send(
        request("/checks")
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(body)));
  }

  private HttpRequest.Builder request(String path) {
    return request(server, path);
  }

  private static HttpRequest.Builder request(WebServer server, String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
  }

  private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
    return client.send(request.build(), BodyHandlers.ofString());
  }

  @Test
  void aRehearsalThatFailsKeepsNothingFromStarting() throws Exception {
    Logger log = (Logger) LoggerFactory.getLogger(WebServer.class);
    log.setLevel(Level.OFF); // the failure is meant
    AtomicBoolean rehearsed = new AtomicBoolean();
    RouteGroup failing =
        new RouteGroup() {
          @Override
          public void addTo(Routes routes) {
            routes.get("/there", context -> context.result("there"));
          }

          @Override
          public List<Runnable> rehearsals() {
            return List.of(
                () -> {
                  throw new IllegalStateException("no rules");
                },
                () -> rehearsed.set(true));
          }
        };
    PrometheusMeterRegistry meters = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    JsonProblems problems = new JsonProblems(mapper);
    try (WebServer another =
        new WebServer(
            new ListeningAddress("127.0.0.1", 0),
            mapper,
            meters,
            new ErrorMapping(problems, problems),
            List.of(failing))) {
      another.rehearse();
      another.start();

      URI there = URI.create("http://127.0.0.1:%d/there".formatted(another.port()));
      assertThat(client.send(HttpRequest.newBuilder(there).build(), BodyHandlers.ofString()).body())
          .isEqualTo("there");
      assertThat(rehearsed).isTrue();
    } finally {
      log.setLevel(null);
    }
  }
}
