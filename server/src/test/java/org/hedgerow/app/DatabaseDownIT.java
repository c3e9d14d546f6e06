package org.hedgerow.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.CachedCentre;
import org.hedgerow.accounts.CentreEdit;
import org.hedgerow.accounts.NewAccount;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.seed.SeededComposer;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.store.StoppableDatabase;
import org.hedgerow.store.review.JdbiReviewRepository;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.contract.Exchange;
import org.hedgerow.web.contract.OpenApiContract;
import org.hedgerow.web.security.Clients;
import org.hedgerow.web.security.MetricsAccess;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The database stops under a running server, and comes back. */
class DatabaseDownIT {
  private static final String PASSWORD = "wild cherry and hazel";
  private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" value=\"([^\"]+)\"");
  private static final List<String> READS =
      List.of(
          "/",
          "/?phonogram=oa&value=1",
          "/words/boat",
          "/needs",
          "/api/v1/words?phonogram=sh",
          "/api/v1/words/boat",
          "/api/v1/centre",
          "/health/live");

  private static final String WORD =
      "{\"proposal\": {\"kind\": \"word\", \"spelling\": \"broam\"}}";

  @TempDir private Path folder;

  private StoppableDatabase database;
  private CachedCentre centre;
  private WebServer server;
  private String token;
  private int ada;
  private final HttpClient adas =
      HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

  @BeforeEach
  void start() throws Exception {
    database = StoppableDatabase.start(folder);
    AccountServices accounts = Wiring.accounts(database.bank());
    var link = accounts.invitations().make(Actor.OPERATOR, Role.ADMINISTRATOR, 7);
    Actor actor =
        Actor.of(accounts.invitations().accept(link, new NewAccount("ada", "Ada", PASSWORD)));
    ada = actor.requireAccount().id();
    token = accounts.tokens().make(actor, "a program", Role.ADMINISTRATOR, 1).text();
    centre = new CachedCentre(accounts.centre()).watch();
    centre.change(actor, new CentreEdit(Optional.of("Hawthorn"), Optional.empty()), x -> true);
    server =
        Wiring.webServer(
            new ListeningAddress("127.0.0.1", 0),
            database.bank(),
            Editions.only(SeededLexicon.get()),
            accounts,
            centre,
            ReviewServices.of(
                new JdbiReviewRepository(database.bank(), SeededLexicon.get().accents()),
                SeededLexicon::get,
                () -> 1,
                edition -> {},
                InstantSource.system()),
            SeededComposer.get(),
            new Clients(false),
            new MetricsAccess(false, Optional.empty(), accounts.tokens()));
    server.start();
    assertThat(signIn(adas)).isEqualTo(303);
    assertThat(get(adas, "/people").statusCode()).isEqualTo(200);
    assertThat(get(adas, "/health/writes").statusCode()).isEqualTo(200);
  }

  @AfterEach
  void stop() {
    server.close();
    centre.close();
    database.close();
  }

  @Test
  void readsGoOnAndEverythingComesBack() throws Exception {
    HttpClient visitor = HttpClient.newHttpClient();
    database.stop();

    assertThat(get(visitor, "/health/ready").statusCode()).isEqualTo(200);
    assertThat(get(visitor, "/health/ready").body()).contains("\"writes\":\"down\"");
    HttpResponse<String> writes = get(visitor, "/health/writes");
    assertThat(writes.statusCode()).isEqualTo(503);
    assertThat(writes.headers().firstValue("Retry-After")).isPresent();
    for (String read : READS) {
      assertThat(get(visitor, read).statusCode()).as(read).isEqualTo(200);
      assertThat(get(adas, read).statusCode()).as(read + ", signed in").isEqualTo(200);
    }
    assertThat(get(visitor, "/sign-in").statusCode()).isEqualTo(200);
    assertThat(get(visitor, "/").body()).contains("<bdi>Hawthorn</bdi>");

    HttpClient late = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    assertThat(signIn(late)).isEqualTo(503);
    HttpResponse<String> page = get(adas, "/people");
    assertThat(page.statusCode()).isEqualTo(503);
    assertThat(page.headers().firstValue("Retry-After")).isPresent();
    assertThat(page.body()).contains("Try again in a moment", "Hawthorn");
    for (String method : List.of("GET", "PATCH")) {
      HttpResponse<String> answer = program(method, "/api/v1/people/" + ada);
      assertThat(answer.statusCode()).isEqualTo(503);
      assertThat(answer.body()).contains("/docs/problems#unavailable").doesNotContain("database");
    }
    assertThat(program("GET", "/api/v1/audit").statusCode()).isEqualTo(503);

    database.startAgain();
    awaitReady(visitor);
    assertThat(get(adas, "/people").statusCode()).as("the same session").isEqualTo(200);
    assertThat(program("GET", "/api/v1/people/" + ada).statusCode()).isEqualTo(200);
    assertThat(signIn(late)).isEqualTo(303);
  }

  /** What needs the database says so at once, and is done when it is back. */
  @Test
  void reviewSaysThatItIsNotPossibleJustNow() throws Exception {
    HttpResponse<String> kept = send("POST", "/api/v1/contributions", WORD);
    assertThat(kept.statusCode()).isEqualTo(201);
    database.stop();

    for (String read : List.of("/api/v1/contributions", "/api/v1/review-queue")) {
      assertUnavailable(send("GET", read, ""));
    }
    assertUnavailable(send("POST", "/api/v1/contributions", WORD));
    assertUnavailable(send("POST", "/api/v1/contribution-checks", WORD));
    assertUnavailable(
        send("POST", "/api/v1/contributions/1/decisions", "{\"decision\": \"approve\"}"));
    assertUnavailable(
        send("PUT", "/api/v1/rules/gentle", "{\"title\": \"Gentle\", \"switches\": []}"));
    for (String page : List.of("/contributions", "/contributions/1", "/review", "/review/1")) {
      HttpResponse<String> answer = get(adas, page);
      assertThat(answer.statusCode()).as(page).isEqualTo(503);
      assertThat(answer.body()).as(page).contains("Try again in a moment").doesNotContain("SQL");
    }

    database.startAgain();
    awaitReady(HttpClient.newHttpClient());
    assertThat(send("GET", "/api/v1/contributions/1", "").body()).contains("broam");
    assertThat(send("GET", "/api/v1/contributions/2", "").statusCode()).isEqualTo(404);
    HttpResponse<String> again = send("POST", "/api/v1/contributions", WORD);
    assertThat(again.statusCode()).as("the same contribution again").isEqualTo(200);
    assertThat(again.body()).contains("broam");
  }

  /** A database that is paused takes connections and statements, and answers nothing. */
  @Test
  void aPausedDatabaseHoldsNobodyForLong() throws Exception {
    for (String read : READS) {
      get(HttpClient.newHttpClient(), read);
    }
    database.pause();
    long start = System.nanoTime();
    List<CompletableFuture<HttpResponse<String>>> writes =
        IntStream.range(0, 12).mapToObj(number -> writing()).toList();
    for (String read : READS) {
      assertThat(get(HttpClient.newHttpClient(), read).statusCode()).as(read).isEqualTo(200);
    }
    assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(5));
    for (CompletableFuture<HttpResponse<String>> write : writes) {
      assertUnavailable(write.get());
    }
    assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(10));
    long later = System.nanoTime();
    assertUnavailable(send("POST", "/api/v1/contributions", WORD));
    assertThat(Duration.ofNanos(System.nanoTime() - later)).isLessThan(Duration.ofSeconds(3));

    database.resume();
    awaitReady(HttpClient.newHttpClient());
    assertThat(send("POST", "/api/v1/contributions", WORD).statusCode()).isEqualTo(201);
  }

  private CompletableFuture<HttpResponse<String>> writing() {
    return HttpClient.newHttpClient()
        .sendAsync(
            request("/api/v1/contributions")
                .POST(BodyPublishers.ofString(WORD))
                .header("Content-Type", "application/json")
                .header("Authorization", "Bearer " + token)
                .build(),
            BodyHandlers.ofString());
  }

  private static void assertUnavailable(HttpResponse<String> answer) {
    assertThat(answer.headers().firstValue("Retry-After")).isPresent();
    assertThat(answer.statusCode()).as(answer.uri().getPath()).isEqualTo(503);
    assertThat(answer.body()).contains("/docs/problems#unavailable").doesNotContain("database");
  }

  /** Whoever is signed in mustn't wait for the database on every page that needs none. */
  @Test
  void manyWhoAreSignedInReadOnWithoutWaiting() throws Exception {
    database.stop();
    get(adas, "/words/boat");
    long start = System.nanoTime();
    List<CompletableFuture<HttpResponse<String>>> answers =
        IntStream.range(0, 100)
            .mapToObj(
                number -> adas.sendAsync(request("/words/boat").build(), BodyHandlers.ofString()))
            .toList();
    for (CompletableFuture<HttpResponse<String>> answer : answers) {
      assertThat(answer.get().statusCode()).isEqualTo(200);
    }
    assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(8));
  }

  private void awaitReady(HttpClient client) throws Exception {
    for (int i = 0; i < 300; i++) {
      if (get(client, "/health/writes").statusCode() == 200) {
        return;
      }
      Thread.sleep(100);
    }
    throw new AssertionError("It isn't ready again.");
  }

  private int signIn(HttpClient client) throws Exception {
    Matcher form = TOKEN.matcher(get(client, "/sign-in").body());
    assertThat(form.find()).isTrue();
    String body =
        "name=ada&password=%s&form-token=%s"
            .formatted(URLEncoder.encode(PASSWORD, StandardCharsets.UTF_8), form.group(1));
    return client
        .send(
            request("/sign-in")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body))
                .build(),
            BodyHandlers.ofString())
        .statusCode();
  }

  private HttpResponse<String> program(String method, String path) throws Exception {
    return send(method, path, method.equals("PATCH") ? "{\"active\": true}" : "");
  }

  private HttpResponse<String> send(String method, String path, String body) throws Exception {
    HttpResponse<String> response =
        HttpClient.newHttpClient()
            .send(
                request(path)
                    .method(method, BodyPublishers.ofString(body))
                    .header("Content-Type", "application/json")
                    .header("Authorization", "Bearer " + token)
                    .build(),
                BodyHandlers.ofString());
    OpenApiContract.published().require(Exchange.of(body, response));
    return response;
  }

  private HttpResponse<String> get(HttpClient client, String path) throws Exception {
    return client.send(request(path).build(), BodyHandlers.ofString());
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
        .header("Accept", "text/html,application/json;q=0.9");
  }
}
