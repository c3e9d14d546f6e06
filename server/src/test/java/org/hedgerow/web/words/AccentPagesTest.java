package org.hedgerow.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.hedgerow.web.testing.PagesServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Accents, comparisons and plans as pages. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccentPagesTest {

  private PagesServer server;

  @BeforeAll
  void start() {
    server = PagesServer.start();
  }

  @AfterAll
  void stop() {
    server.close();
  }

  /** A form without scripts sends each accent by itself. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/?accent=en-US&accent=en-GB            | /?accent=en-US,en-GB",
        "/?accent=en-US                         | /",
        "/?phonogram=oa&accent=en-US&rules=usual | /?phonogram=oa&value=1",
        "/?find=sh&accent=en-GB&accent=en-GB    | /?find=sh&accent=en-GB"
      })
  void theAddressKeepsTheAccents(String asked, String address) throws Exception {
    HttpResponse<String> response = server.get(asked);
    assertThat(response.statusCode()).isEqualTo(302);
    assertThat(response.headers().firstValue("Location").orElse("")).endsWith(address);
  }

  /** In the south of Britain path says the vowel of father (Wells 1982: BATH). */
  @Test
  void aListForTwoAccentsHoldsWhatIsRightInBoth() throws Exception {
    assertThat(server.get("/?phonogram=th&value=1").body()).contains("id=\"word-path\"");
    assertThat(server.get("/?phonogram=th&value=1&accent=en-US,en-GB").body())
        .contains("id=\"word-thin\"", "General American and southern British English")
        .doesNotContain("id=\"word-path\"");
  }

  /** Australian English has few entries of its own in the seed. */
  @Test
  void aWordSaysWhichAccentItFollows() throws Exception {
    String british = ", as in southern British English";
    assertThat(server.get("/?phonogram=sh&value=1&accent=en-AU&word=ship").body())
        .contains(british);
    assertThat(server.get("/?phonogram=sh&value=1&accent=en-GB&word=ship").body())
        .doesNotContain(british);
  }

  /** BATH words (Wells 1982). */
  @Test
  void theWordPageIsAboutTheAccentAskedFor() throws Exception {
    assertThat(server.get("/words/glass?accent=en-GB").body())
        .contains("As said in southern British English", "/ɡ l ɑː s/")
        .contains("href=\"/words/glass\"");
    assertThat(server.get("/words/glass").body()).contains("/ɡ l æ s/");
    assertThat(server.get("/?phonogram=sh&value=1&accent=en-GB&word=ship").body())
        .contains("/words/ship?accent=en-GB");
    assertThat(server.get("/words/glass?accent=en-XX").statusCode()).isEqualTo(400);
    assertThat(server.get("/words/Glass?accent=en-GB").headers().firstValue("Location").orElse(""))
        .endsWith("/words/glass?accent=en-GB");
  }

  @Test
  void aComparisonSaysWhyAWordIsMissing() throws Exception {
    String page = server.get("/compare?phonogram=th&value=1&accent=en-US&with=en-GB").body();
    int only = page.indexOf("Only in General American");
    int path = page.indexOf("/words/path\"");
    int both = page.indexOf("In both");
    assertThat(only).isPositive().isLessThan(path);
    assertThat(path).isLessThan(both);
    assertThat(page.substring(path, both)).contains("/ɑː/");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/compare?phonogram=oa&accent=en-GB&with=en-GB | the same accent",
        "/compare?phonogram=pn&accent=en-US&with=en-GB | Neither accent has a word here",
        "/compare                                      | Two accents compared",
        "/sequences?sequence=pairs                     | Pairs of consonants",
        "/sight-words?accent=en-GB                     | Dolch&#39;s basic words",
        "/needs?accent=en-AU                           | What is still needed"
      })
  void thereIsAlwaysAPageThatHelps(String address, String words) throws Exception {
    HttpResponse<String> response = server.get(address);
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.body()).contains(words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/?accent=qq                       | en-US",
        "/compare?phonogram=oa&with=qq     | en-US",
        "/compare?phonogram=ao             | There is no phonogram",
        "/sequences?sequence=%3Cscript%3E  | pairs, single, sounds, ours",
        "/needs?accent=%00                 | en-US",
        "/sight-words?accent=qq            | en-US",
        "/?phonogram=oa&taught=ours:9999   | has no step"
      })
  void badInputIsToldInWords(String address, String words) throws Exception {
    HttpResponse<String> response = server.get(address);
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(response.body()).contains(words).doesNotContain("<script>", "Exception");
  }
}
