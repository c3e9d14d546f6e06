package org.hedgerow.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.HttpCookie;
import java.net.http.HttpResponse;
import java.time.Duration;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.web.contract.Exchange;
import org.hedgerow.web.contract.OpenApiContract;
import org.hedgerow.web.testing.PeopleServer;
import org.hedgerow.web.testing.PeopleServer.Client;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sessions, tokens and forms over HTTP. */
class AccessTest {
  private PeopleServer server = PeopleServer.start();

  @BeforeEach
  void rosa() {
    server.person("rosa", Role.REVIEWER);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  @Test
  void signsInAndOut() throws Exception {
    Client client = server.client().signIn("rosa");
    HttpResponse<String> page = client.get("/account");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.headers().firstValue("Cache-Control")).contains("no-store");
    assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
        .contains("form-action 'self'");
    String old = client.cookie("hedgerow-session").orElseThrow().getValue();
    assertThat(client.form("/account", "/sign-out").statusCode()).isEqualTo(303);
    assertThat(client.get("/account").statusCode()).isEqualTo(303);
    assertThat(server.client().get("/account", "Cookie", "hedgerow-session=" + old).statusCode())
        .as("the old cookie")
        .isEqualTo(303);
  }

  @Test
  void theCookieIsHiddenFromScriptsAndOtherSites() throws Exception {
    assertThat(signInCookie(server))
        .startsWith("hedgerow-session=")
        .contains("HttpOnly", "SameSite=Lax", "Path=/")
        .doesNotContain("Secure");
    try (PeopleServer behindTls = PeopleServer.start(true)) {
      behindTls.person("rosa", Role.REVIEWER);
      assertThat(signInCookie(behindTls))
          .startsWith("__Host-hedgerow-session=")
          .contains("HttpOnly", "SameSite=Lax", "Secure", "Path=/")
          .doesNotContain("Domain");
    }
  }

  /** By hand: Java's cookie jar keeps secure cookies from plain HTTP. */
  private static String signInCookie(PeopleServer server) throws Exception {
    Client client = server.client();
    HttpResponse<String> page = client.get("/sign-in");
    String form = page.headers().firstValue("Set-Cookie").orElseThrow().replaceAll(";.*", "");
    String token = page.body().replaceAll("(?s).*name=\"form-token\" value=\"([^\"]+)\".*", "$1");
    HttpResponse<String> answer =
        server
            .client()
            .send(
                "POST",
                "/sign-in",
                "name=rosa&password=wild+cherry+and+hazel&form-token=" + token,
                "Cookie",
                form,
                "Content-Type",
                "application/x-www-form-urlencoded");
    assertThat(answer.statusCode()).isEqualTo(303);
    return answer.headers().allValues("Set-Cookie").stream()
        .filter(cookie -> cookie.contains("hedgerow-session="))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/", "/sign-in", "/nowhere", "/api/v1/words?phonogram=oa", "/api/v1/x", "/docs"})
  void everyAnswerSaysWhatItIsAndStaysOutOfFrames(String path) throws Exception {
    var headers = server.client().get(path).headers();
    assertThat(headers.firstValue("X-Content-Type-Options")).contains("nosniff");
    assertThat(headers.firstValue("Referrer-Policy")).contains("same-origin");
    assertThat(headers.firstValue("Content-Security-Policy").orElse(""))
        .contains("frame-ancestors 'none'");
  }

  @Test
  void otherSitesGetNoMoreThanVisitors() throws Exception {
    Client client = server.client().signIn("rosa");
    HttpResponse<String> answer = client.get("/api/v1/account", "Origin", "http://other.example");
    assertThat(answer.headers().firstValue("Access-Control-Allow-Origin")).contains("*");
    assertThat(answer.headers().firstValue("Access-Control-Allow-Credentials"))
        .as("browsers keep the answer from the page, since the cookie went along")
        .isEmpty();
    HttpResponse<String> preflight =
        client.send("OPTIONS", "/api/v1/centre", "", "Origin", "http://other.example");
    assertThat(preflight.headers().firstValue("Access-Control-Allow-Headers").orElse(""))
        .doesNotContain("Authorization");
    assertThat(preflight.headers().firstValue("Access-Control-Allow-Methods")).contains("GET");
  }

  /** Whoever could say where they are would never have to wait. */
  @Test
  void believesTheServerBeforeItOnlyIfThereIsOne() throws Exception {
    assertThat(statusOfTheLastOfManyAttempts(server)).isEqualTo(429);
    try (PeopleServer behindTls = PeopleServer.start(true)) {
      assertThat(statusOfTheLastOfManyAttempts(behindTls)).isNotEqualTo(429);
    }
  }

  /** Each for another name, and as if from another address. */
  private static int statusOfTheLastOfManyAttempts(PeopleServer server) throws Exception {
    int status = 0;
    for (int i = 0; i <= 60; i++) {
      status = attempt(server, "name" + i, "192.0.2." + i).statusCode();
    }
    return status;
  }

  private static HttpResponse<String> attempt(PeopleServer server, String name, String address)
      throws Exception {
    HttpResponse<String> page = server.client().get("/sign-in");
    String form = page.headers().firstValue("Set-Cookie").orElseThrow().replaceAll(";.*", "");
    String token = page.body().replaceAll("(?s).*name=\"form-token\" value=\"([^\"]+)\".*", "$1");
    return server
        .client()
        .send(
            "POST",
            "/sign-in",
            "name=%s&password=guess&form-token=%s".formatted(name, token),
            "Cookie",
            form,
            "X-Forwarded-For",
            "203.0.113.9, " + address,
            "Content-Type",
            "application/x-www-form-urlencoded");
  }

  @Test
  void aNameWithASignThatDatabasesDoNotTakeIsWrong() throws Exception {
    Client client = server.client();
    for (String name : new String[] {"ro\u0000sa", "\u0000", "x".repeat(3000)}) {
      assertThat(
              client.form("/sign-in", "/sign-in", "name", name, "password", "guess").statusCode())
          .isEqualTo(401);
    }
  }

  @Test
  void signingInChangesTheSession() throws Exception {
    Client client = server.client().signIn("rosa");
    String first = client.cookie("hedgerow-session").orElseThrow().getValue();
    client.signIn("rosa");
    assertThat(client.cookie("hedgerow-session").orElseThrow().getValue()).isNotEqualTo(first);
    assertThat(server.client().get("/account", "Cookie", "hedgerow-session=" + first).statusCode())
        .isEqualTo(303);
  }

  @Test
  void refusesForgedForms() throws Exception {
    Client client = server.client().signIn("rosa");
    Client eve = server.client();
    for (String token : new String[] {"", "x", eve.token("/sign-in")}) {
      HttpResponse<String> answer = client.post("/account/name", token, "displayName", "Eve");
      assertThat(answer.statusCode()).isEqualTo(403);
    }
    assertThat(client.get("/account").body()).contains("value=\"rosa\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Sec-Fetch-Site: cross-site",
        "Sec-Fetch-Site: same-site",
        "Origin: http://evil.example"
      })
  void refusesFormsOfOtherSites(String header) throws Exception {
    Client client = server.client().signIn("rosa");
    String body = "displayName=Eve&form-token=" + client.token("/account");
    String[] parts = header.split(": ", 2);
    HttpResponse<String> answer =
        client.send(
            "POST",
            "/account/name",
            body,
            "Content-Type",
            "application/x-www-form-urlencoded",
            parts[0],
            parts[1]);
    assertThat(answer.statusCode()).isEqualTo(403);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "//evil.example",
        "https://evil.example",
        "/\\evil.example",
        "javascript:alert(1)",
        "/a\r\nb"
      })
  void sendsNobodyElsewhere(String then) throws Exception {
    HttpResponse<String> answer =
        server
            .client()
            .form(
                "/sign-in",
                "/sign-in",
                "name",
                "rosa",
                "password",
                PeopleServer.PASSWORD,
                "then",
                then);
    assertThat(answer.headers().firstValue("Location").orElse(""))
        .endsWith("/")
        .doesNotContain("evil");
  }

  @Test
  void goesOnWhereOneWantedToGo() throws Exception {
    HttpResponse<String> answer =
        server
            .client()
            .form(
                "/sign-in",
                "/sign-in",
                "name",
                "rosa",
                "password",
                PeopleServer.PASSWORD,
                "then",
                "/account?done=name");
    assertThat(answer.headers().firstValue("Location").orElse("")).endsWith("/account?done=name");
  }

  @Test
  void makesThoseWaitWhoFailAgainAndAgain() throws Exception {
    Client client = server.client();
    for (int i = 0; i < 5; i++) {
      assertThat(client.form("/sign-in", "/sign-in", "name", "rosa", "password", "no").statusCode())
          .isEqualTo(401);
    }
    HttpResponse<String> answer =
        client.form("/sign-in", "/sign-in", "name", "rosa", "password", PeopleServer.PASSWORD);
    assertThat(answer.statusCode()).isEqualTo(429);
    assertThat(answer.headers().firstValue("Retry-After")).isPresent();
  }

  @Test
  void aBrowserThatWasSignedInBeforeNeedNotWaitForTheGuessesOfOthers() throws Exception {
    Client owner = server.client().signIn("rosa");
    HttpCookie device = owner.cookie("hedgerow-device").orElseThrow();
    assertThat(device.isHttpOnly()).isTrue();
    assertThat(Duration.ofSeconds(device.getMaxAge())).isGreaterThan(Duration.ofDays(300));
    owner.form("/account", "/sign-out");
    Client guesser = server.client();
    String[] fields = {"name", "rosa", "password", "a guess"};
    for (int i = 0; i < 5; i++) {
      guesser.form("/sign-in", "/sign-in", fields);
    }
    HttpResponse<String> refused = guesser.form("/sign-in", "/sign-in", fields);
    assertThat(refused.statusCode()).isEqualTo(429);
    assertThat(refused.headers().firstValue("RateLimit")).hasValue("\"sign-in\";r=0;t=1");
    fields[3] = PeopleServer.PASSWORD;
    assertThat(owner.form("/sign-in", "/sign-in", fields).statusCode()).isEqualTo(303);
  }

  @Test
  void aTokenOpensTheInterface() throws Exception {
    Actor rosa = server.person("rosalind", Role.REVIEWER);
    String token = server.accounts().tokens().make(rosa, "a script", Role.CONTRIBUTOR, 1).text();
    HttpResponse<String> answer = withToken("/api/v1/account", token);
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains("\"role\":\"contributor\"", "\"name\":\"rosalind\"");
    OpenApiContract.published().require(Exchange.of("", answer));
    OpenApiContract.published().require(Exchange.of("", server.client().get("/api/v1/account")));
    assertThat(withToken("/account", token).statusCode()).as("no page").isEqualTo(303);
    server.clock().goOn(Duration.ofDays(1));
    assertThat(withToken("/api/v1/account", token).statusCode()).isEqualTo(401);
    assertThat(withToken("/api/v1/phonograms", token).statusCode())
        .as("what visitors may")
        .isEqualTo(401);
    assertThat(withToken("/api/v1/account", "x".repeat(5000)).statusCode()).isEqualTo(401);
  }

  private HttpResponse<String> withToken(String path, String token) throws Exception {
    return server.client().get(path, "Authorization", "Bearer " + token);
  }

  @Test
  void aLinkIsGoodOnceAndNamesNeedNoScript() throws Exception {
    String link =
        "/welcome/" + server.accounts().invitations().make(Actor.OPERATOR, Role.REVIEWER, 7).text();
    Client client = server.client();
    String[] fields = {
      "name", "نور", "displayName", "<script>alert(1)</script>", "password", "کلمه عبور خوب"
    };
    assertThat(client.form(link, link, fields).statusCode()).isEqualTo(303);
    assertThat(client.get("/account").body())
        .contains("&lt;script>alert(1)&lt;/script>")
        .doesNotContain("<script>alert");
    assertThat(server.client().get(link).statusCode()).isEqualTo(404);
    assertThat(server.client().form("/sign-in", link, fields).statusCode()).isEqualTo(404);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 10_000})
  void saysWhatIsWrongWithAPassword(int length) throws Exception {
    String link =
        "/welcome/" + server.accounts().invitations().make(Actor.OPERATOR, Role.REVIEWER, 7).text();
    HttpResponse<String> answer =
        server
            .client()
            .form(link, link, "name", "tom", "displayName", "Tom", "password", "x".repeat(length));
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("A password", "value=\"tom\"");
    assertThat(server.client().get(link).statusCode()).isEqualTo(200);
  }
}
