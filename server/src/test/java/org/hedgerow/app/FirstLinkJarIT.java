package org.hedgerow.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The link that the program prints at its first start, and what changes behind TLS. */
class FirstLinkJarIT {
  private static final Pattern LINK = Pattern.compile("(https?://\\S+)(/welcome/[\\w-]{43})\\s");
  private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" value=\"([^\"]+)\"");

  @TempDir private Path folder;

  private final HttpClient client = HttpClient.newHttpClient();

  @BeforeEach
  void fill() throws Exception {
    SeededData.copyInto(folder);
  }

  private RunningJar serve(String... more) {
    List<String> arguments = new java.util.ArrayList<>(List.of("serve", "--port", "0"));
    arguments.addAll(List.of(more));
    return RunningJar.start(folder, arguments.toArray(String[]::new));
  }

  private static Matcher printed(RunningJar jar) throws InterruptedException {
    jar.awaitOut("/welcome/");
    Matcher link = LINK.matcher(jar.out());
    assertThat(link.find()).as(jar.out()).isTrue();
    return link;
  }

  private HttpResponse<String> get(String address) throws Exception {
    return client.send(
        HttpRequest.newBuilder(URI.create(address)).header("Accept", "text/html").build(),
        BodyHandlers.ofString());
  }

  /** As the page's form would, with its cookie. */
  private HttpResponse<String> accept(String address, String name) throws Exception {
    HttpResponse<String> page = get(address);
    Matcher token = TOKEN.matcher(page.body());
    assertThat(token.find()).isTrue();
    return client.send(
        HttpRequest.newBuilder(URI.create(address))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .header("Cookie", cookie(page, "form").orElseThrow())
            .POST(
                BodyPublishers.ofString(
                    "name=%s&displayName=Ada&password=wild+cherry+and+hazel&form-token=%s"
                        .formatted(name, token.group(1))))
            .build(),
        BodyHandlers.ofString());
  }

  private static Optional<String> cookie(HttpResponse<String> response, String kind) {
    return response.headers().allValues("Set-Cookie").stream()
        .filter(cookie -> cookie.contains("hedgerow-" + kind))
        .map(cookie -> cookie.replaceAll(";.*", ""))
        .findFirst();
  }

  @Test
  void theLinkMakesOneAdministratorAndIsNotPrintedAgain() throws Exception {
    String first;
    try (RunningJar jar = serve()) {
      Matcher link = printed(jar);
      assertThat(link.group(1)).isEqualTo(jar.awaitReady());
      first = link.group(2);
      assertThat(jar.stop()).isZero();
    }
    try (RunningJar jar = serve()) {
      String second = printed(jar).group(2);
      String origin = jar.awaitReady();
      assertThat(second).isNotEqualTo(first);
      assertThat(get(origin + first).statusCode()).as("the one before").isEqualTo(404);
      HttpResponse<String> made = accept(origin + second, "ada");
      assertThat(made.statusCode()).isEqualTo(303);
      assertThat(get(origin + second).statusCode()).as("used").isEqualTo(404);
      HttpResponse<String> people = asPerson(origin + "/people", cookie(made, "session"));
      assertThat(people.statusCode()).isEqualTo(200);
      assertThat(jar.stop()).isZero();
    }
    try (RunningJar jar = serve()) {
      jar.awaitReady();
      assertThat(jar.get("/health/ready").statusCode()).isEqualTo(200);
      assertThat(jar.stop()).isZero();
      assertThat(jar.out()).doesNotContain("/welcome/");
    }
  }

  private HttpResponse<String> asPerson(String address, Optional<String> cookie) throws Exception {
    return client.send(
        HttpRequest.newBuilder(URI.create(address))
            .header("Accept", "text/html")
            .header("Cookie", cookie.orElseThrow())
            .build(),
        BodyHandlers.ofString());
  }

  @Test
  void behindTlsCookiesStayThereAndLinksLeadThere() throws Exception {
    try (RunningJar jar = serve("--behind-tls", "--public-url", "https://words.example/")) {
      Matcher link = printed(jar);
      assertThat(link.group(1)).isEqualTo("https://words.example");
      String origin = jar.awaitReady();
      HttpResponse<String> made = accept(origin + link.group(2), "ada");
      assertThat(made.headers().allValues("Set-Cookie"))
          .isNotEmpty()
          .allMatch(cookie -> cookie.startsWith("__Host-hedgerow-") && cookie.contains("Secure"));
      String session = cookie(made, "session").orElseThrow();
      HttpResponse<String> people = asPerson(origin + "/people", Optional.of(session));
      assertThat(people.statusCode()).isEqualTo(200);
      assertThat(
              asPerson(origin + "/people", Optional.of(session.substring("__Host-".length())))
                  .statusCode())
          .as("a cookie that could come from elsewhere")
          .isEqualTo(303);
      Matcher token = TOKEN.matcher(people.body());
      assertThat(token.find()).isTrue();
      HttpResponse<String> invited =
          client.send(
              HttpRequest.newBuilder(URI.create(origin + "/people/invitations"))
                  .header("Content-Type", "application/x-www-form-urlencoded")
                  .header("Cookie", session)
                  .POST(
                      BodyPublishers.ofString("role=reviewer&days=7&form-token=" + token.group(1)))
                  .build(),
              BodyHandlers.ofString());
      assertThat(invited.body()).contains("value=\"https://words.example/welcome/");
      assertThat(jar.stop()).isZero();
    }
  }
}
