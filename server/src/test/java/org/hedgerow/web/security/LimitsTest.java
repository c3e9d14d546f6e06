package org.hedgerow.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.http.Context;
import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.hedgerow.accounts.SettableClock;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.Routes;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.testing.SmallPace;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Quotas for each client and turns for all, on a server that has nothing else. */
@Timeout(20)
class LimitsTest {
  private static final Duration PATIENCE = Duration.ofMillis(1500);

  private final SettableClock clock = new SettableClock();
  private final RateLimit pace = SmallPace.of(2, new Clients(true), clock);
  private final ConcurrencyLimit turns = new ConcurrencyLimit(1, 1, PATIENCE, "Come again later.");
  private final CountDownLatch started = new CountDownLatch(1);
  private final CountDownLatch end = new CountDownLatch(1);
  private final HttpClient client = HttpClient.newHttpClient();
  private WebServer server;

  @BeforeEach
  void start() {
    JsonProblems problems = new JsonProblems(JsonMapping.mapper());
    server =
        new WebServer(
            new ListeningAddress("127.0.0.1", 0),
            JsonMapping.mapper(),
            new SimpleMeterRegistry(),
            new ErrorMapping(problems, problems),
            List.of(this::routes));
    server.start();
  }

  @AfterEach
  void stop() {
    end.countDown();
    server.close();
  }

  private void routes(Routes routes) {
    routes.get("/counted", pace::count);
    routes.get("/shown", pace::show);
    routes.get("/slow", context -> turns.take(context, this::untilTheEnd));
    routes.get("/quick", context -> turns.take(context, () -> "done"));
    routes.get("/free", LimitsTest::free);
  }

  private boolean untilTheEnd() {
    started.countDown();
    try {
      return end.await(10, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private static void free(Context context) {
    context.result("free");
  }

  private CompletableFuture<HttpResponse<String>> begin(String path) {
    return client.sendAsync(from("192.0.2.1", path), BodyHandlers.ofString());
  }

  private HttpResponse<String> get(String address, String path) throws Exception {
    return client.send(from(address, path), BodyHandlers.ofString());
  }

  private HttpRequest from(String address, String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
        .header("X-Forwarded-For", address)
        .build();
  }

  private static String header(HttpResponse<String> response, String name) {
    return response.headers().firstValue(name).orElse("none");
  }

  @Test
  void everyAnswerSaysWhatIsLeft() throws Exception {
    HttpResponse<String> first = get("192.0.2.1", "/counted");
    assertThat(header(first, "RateLimit-Policy")).isEqualTo("\"tests\";q=2;w=60");
    assertThat(header(first, "RateLimit")).isEqualTo("\"tests\";r=1;t=30");
    assertThat(header(get("192.0.2.1", "/shown"), "RateLimit")).isEqualTo("\"tests\";r=1;t=30");
    assertThat(header(get("192.0.2.1", "/counted"), "RateLimit")).isEqualTo("\"tests\";r=0;t=60");
  }

  @Test
  void oneTooManyIsRefusedUntilTheTimeThatBothHeadersName() throws Exception {
    get("192.0.2.1", "/counted");
    get("192.0.2.1", "/counted");
    HttpResponse<String> refused = get("192.0.2.1", "/counted");
    assertThat(refused.statusCode()).isEqualTo(429);
    assertThat(header(refused, "Retry-After")).isEqualTo("30");
    assertThat(header(refused, "RateLimit")).isEqualTo("\"tests\";r=0;t=30");
    assertThat(get("192.0.2.2", "/counted").statusCode()).as("somebody else").isEqualTo(200);
    clock.goOn(Duration.ofSeconds(30));
    assertThat(get("192.0.2.1", "/counted").statusCode()).isEqualTo(200);
  }

  @Test
  void anIpv6NetworkIsOneClient() throws Exception {
    get("2001:db8::1", "/counted");
    get("2001:db8::2", "/counted");
    assertThat(get("2001:db8::3", "/counted").statusCode()).isEqualTo(429);
    assertThat(get("2001:db8:0:1::3", "/counted").statusCode()).isEqualTo(200);
  }

  @Test
  void aFewWaitForTheirTurnAndAllOthersAreRefusedAtOnce() throws Exception {
    CompletableFuture<HttpResponse<String>> running = begin("/slow");
    started.await();
    CompletableFuture<HttpResponse<String>> waiting = begin("/quick");
    HttpResponse<String> waitedInVain = waiting.get();
    assertThat(waitedInVain.statusCode()).isEqualTo(503);
    assertThat(header(waitedInVain, "Retry-After")).isEqualTo("1");
    assertThat(waitedInVain.body()).contains("/docs/problems#unavailable", "Come again later.");

    List<CompletableFuture<HttpResponse<String>>> crowd =
        List.of(begin("/quick"), begin("/quick"), begin("/quick"));
    assertThat(get("192.0.2.1", "/free").body()).isEqualTo("free");
    awaitRefusals(crowd);
    end.countDown();
    assertThat(crowd.stream().map(CompletableFuture::join).map(HttpResponse::statusCode))
        .as("one waits and gets its turn")
        .containsExactlyInAnyOrder(200, 503, 503);
    assertThat(running.get().statusCode()).isEqualTo(200);
    assertThat(get("192.0.2.1", "/quick").statusCode())
        .as("all turns are given back")
        .isEqualTo(200);
  }

  private static void awaitRefusals(List<CompletableFuture<HttpResponse<String>>> crowd)
      throws InterruptedException {
    while (crowd.stream().filter(CompletableFuture::isDone).count() < crowd.size() - 1) {
      TimeUnit.MILLISECONDS.sleep(5);
    }
  }
}
