package org.hedgerow.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.web.testing.PagesServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages as they come over HTTP: addresses, bad input in words, headers. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesTest {

  private final HttpClient client = HttpClient.newHttpClient();
  private PagesServer server;

  @BeforeAll
  void start() {
    server = PagesServer.start();
  }

  @AfterAll
  void stop() {
    server.close();
  }

  private static String header(HttpResponse<String> response, String name) {
    return response.headers().firstValue(name).orElse("");
  }

  @ParameterizedTest
  @CsvSource({
    "/?phonogram=OA,                                  /?phonogram=oa&value=1",
    "/?value=1&phonogram=oa&letters=&commonness=2,    /?phonogram=oa&value=1",
    "/?sort=default&phonogram=oa&value=1&position=end, /?phonogram=oa&value=1&position=end",
    "/?phonogram=oa&taught=ch%2C+sh,                  '/?phonogram=oa&value=1&taught=ch,sh'",
    "/?find=,                                         /",
    "/?word=boat,                                     /words/boat",
    "/words/Boat,                                     /words/boat"
  })
  void everyPageHasOneAddress(String asked, String address) throws Exception {
    HttpResponse<String> response = server.get(asked);

    assertThat(response.statusCode()).isEqualTo(302);
    assertThat(header(response, "Location")).endsWith(address);
    assertThat(server.get(address).statusCode()).isEqualTo(200);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/?phonogram=OA", "/?phonogram=oa&letters="})
  void aScriptIsToldTheAddressInstead(String asked) throws Exception {
    HttpResponse<String> response = server.get(asked, "HX-Request", "true");

    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(header(response, "HX-Push-Url")).isEqualTo("/?phonogram=oa&value=1");
  }

  @ParameterizedTest
  @CsvSource({
    "/?phonogram=ao,                      href=\"/?phonogram=oa&amp;value=1\"",
    "/?phonogram=oo&value=9,              href=\"/?phonogram=oo&amp;value=3\"",
    "/?phonogram=oa&value=x,              value",
    "/?phonogram=oa&taught=zq,            There is no phonogram “zq”",
    "/?phonogram=oa&accent=en-NZ,         en-US",
    "/?sound=qq,                          sound",
    "/?shape=cvx,                         shape",
    "/?phonogram=oa&letters=0,            letters",
    "/?phonogram=oa&position=top,         start",
    "/?phonogram=oa&phonogram=sh,         more than once",
    "/?phonogram=oa&after=nowhere,        begin again",
    "/?phonogram=%3Cscript%3E,            There is no phonogram “&lt;script&gt;”",
    "/?phonogram=oa&value=1&word=b0at,            has a digit in it",
    "/?phonogram=oa&value=1&word=%3Cb%3E,         Use the letters a to z only",
    "/?phonogram=oa&value=1&word=%F0%9F%90%91,    Use the letters a to z only",
    "/words/b0at,                         has a digit in it"
  })
  void badInputIsToldInWords(String address, String words) throws Exception {
    HttpResponse<String> response = server.get(address);

    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(header(response, "Content-Type")).startsWith("text/html");
    assertThat(response.body())
        .contains(words)
        .doesNotContain("<script>", "Exception", "org.hedgerow");
  }

  /** Other sites add parameters to links, and people send such links on. */
  @ParameterizedTest
  @CsvSource({
    "/,                      /?utm_source=letter",
    "/?phonogram=oa&value=1, /?phonogram=oa&value=1&fbclid=IwAR0",
    "/needs,                 /needs?utm_source=letter&utm_medium=email",
    "/sentences?for=oa+1,    /sentences?for=oa+1&gclid=x",
    "/compare?phonogram=oa,  /compare?phonogram=oa&gclid=x",
    "/sight-words,           /sight-words?fbclid=IwAR0",
    "/words/goat,            /words/goat?fbclid=IwAR0"
  })
  void parametersThatNobodyKnowsArePassedOver(String page, String address) throws Exception {
    HttpResponse<String> response = server.get(address);
    String shown = response.headers().firstValue("Location").orElse(address);
    assertThat(server.get(shown).statusCode()).isEqualTo(200);
    assertThat(server.get(shown).body()).isEqualTo(server.get(page).body());
  }

  @ParameterizedTest
  @CsvSource({
    "/editions/x,         edition must be a whole number",
    "/needs?edition=x,    edition must be a whole number",
    "/sight-words?edition=1&edition=1,   more than once"
  })
  void aMistypedAddressIsNoTalkOfParameters(String address, String words) throws Exception {
    HttpResponse<String> response = server.get(address);

    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(response.body()).contains("<title>Something in this address is wrong", words);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/?phonogram=%00",
        "/?phonogram=oa&word=%00",
        "/?phonogram=oa&word=%C4%B1ce",
        "/?word=%3Cscript%3E",
        "/?find=%00%3Cscript%3E",
        "/?find='%20or%201=1",
        "/?phonogram=oa&letters=99999999999999999999",
        "/?phonogram=oa&limit=501",
        "/?=",
        "/?&&&",
        "/?phonogram",
        "/words/%3Cscript%3E",
        "/words/%20"
      })
  void nothingGivesAnErrorOfOurs(String address) throws Exception {
    HttpResponse<String> response = server.get(address);

    assertThat(response.statusCode()).isLessThan(500);
    assertThat(response.body()).doesNotContain("<script>", "Exception");
  }

  @Test
  void aLongWordIsToldInWords() throws Exception {
    HttpResponse<String> response = server.get("/?phonogram=oa&value=1&word=" + "a".repeat(200));

    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(response.body()).contains("is too long");
  }

  @Test
  void anUnknownWordIsNotFoundButGuessed() throws Exception {
    HttpResponse<String> response = server.get("/words/teachxr");

    assertThat(response.statusCode()).isEqualTo(404);
    assertThat(response.body()).contains("doesn’t hold this word", ">teacher</a>");
  }

  @Test
  void programsGetProblemsAsJson() throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(server.origin() + "/nowhere"))
            .header("Accept", "application/json")
            .build();
    HttpResponse<String> response = client.send(request, BodyHandlers.ofString());

    assertThat(response.statusCode()).isEqualTo(404);
    assertThat(header(response, "Content-Type")).isEqualTo("application/problem+json");
  }

  @Test
  void thePolicyLetsNothingInFromElsewhere() throws Exception {
    HttpResponse<String> response = server.get("/?phonogram=oa&value=1&word=boat");

    assertThat(header(response, "Content-Security-Policy"))
        .contains("default-src 'none'", "script-src 'self'", "style-src 'self'")
        .doesNotContain("unsafe", "http:", "https:", "*", "data:");
    assertThat(response.body()).doesNotContain(" style=", "<style", " onclick", "//");
  }

  @Test
  void filesAreKeptForGoodByTheirChecksum() throws Exception {
    Matcher styles =
        Pattern.compile("/assets/hedgerow\\.css\\?v=[0-9a-f]+").matcher(server.get("/").body());
    assertThat(styles.find()).isTrue();

    HttpResponse<String> file = server.get(styles.group());
    assertThat(header(file, "Cache-Control")).contains("immutable");
    assertThat(header(file, "Content-Type")).isEqualTo("text/css; charset=utf-8");
    assertThat(file.body()).contains("url(/assets/andika-latin-400-normal.woff2?v=");

    HttpResponse<String> again =
        server.get("/assets/hedgerow.css", "If-None-Match", header(file, "ETag"));
    assertThat(again.statusCode()).isEqualTo(304);
    assertThat(header(again, "Cache-Control")).doesNotContain("immutable");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/assets/nothing.css", "/assets/..%2Flogback.xml", "/assets/OFL.txt"})
  void noOtherFilesAreServed(String address) throws Exception {
    assertThat(server.get(address).statusCode()).isIn(400, 404);
  }
}
