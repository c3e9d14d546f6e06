package org.hedgerow.web.site;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.hedgerow.web.testing.ApiServer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is sent, the answer is a problem of the right type that says what to do. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BadInputTest {

  private static final String API = "/api/v1";

  private ApiServer server;

  @BeforeAll
  void start() {
    server = ApiServer.start();
  }

  @AfterAll
  void stop() {
    server.close();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /words?phonogram=ao                     | 400 | unknown-phonogram  | phonogram  | oa
          /words?phonogram=%F0%9F%92%A9           | 400 | unknown-phonogram  | phonogram  | oa, igh
          /words?phonogram=oa%00                  | 400 | unknown-phonogram  | phonogram  | �
          /words?phonogram=<script>               | 400 | unknown-phonogram  | phonogram  | oa, igh
          /words?phonogram=';drop+table+words;--  | 400 | unknown-phonogram  | phonogram  | oa, igh
          /words?phonogram=shı                    | 400 | unknown-phonogram  | phonogram  | oa, igh
          /words?phonogram=%FF%FE                 | 400 | unknown-phonogram  | phonogram  | oa, igh
          /words?phonogram=                       | 400 | invalid-parameter  | phonogram  | leave it out
          /words?phonogram                        | 400 | invalid-parameter  | phonogram  | leave it out
          /words?phonogram=oa&value=7             | 400 | unknown-value      | value      | 1 (
          /words?phonogram=oa&value=0             | 400 | unknown-value      | value      | 1 (
          /words?phonogram=oa&value=one           | 400 | invalid-parameter  | value      | 1 (
          /words?phonogram=oa&value=-1            | 400 | invalid-parameter  | value      | 1 (
          /words?phonogram=oa&value=999999999999  | 400 | invalid-parameter  | value      | 1 (
          /words?value=1                          | 400 | invalid-parameter  | value      | phonogram
          /words?accent=en-ZZ                     | 400 | unknown-accent     | accent     | en-US
          /words?accent=en-US,xx                  | 400 | unknown-accent     | accent     | en-US
          /phonograms?accent=klingon              | 400 | unknown-accent     | accent     | en-US
          /words?sound=sh                         | 400 | unknown-sound      | sound      | ʃ
          /words?sound=%CA%98                     | 400 | unknown-sound      | sound      | oʊ
          /words?sound=k+s                        | 400 | invalid-parameter  | sound      | one at a time
          /sounds/sh                              | 404 | unknown-sound      | sound      | ʃ
          /sounds/%F0%9F%90%91                    | 404 | unknown-sound      | sound      | oʊ
          /sounds/OW?accent=xx                    | 400 | unknown-accent     | accent     | en-US
          /words?shape=cxc                        | 400 | unknown-shape      | shape      | cvc
          /words?shape=cvcvcvcvcvcv               | 400 | unknown-shape      | shape      | 8 at most
          /words?letters=0                        | 400 | invalid-parameter  | letters    | 3-5
          /words?letters=3-x                      | 400 | invalid-parameter  | letters    | 3-5
          /words?letters=caf%C3%A9                | 400 | invalid-parameter  | letters    | satpin
          /words?syllables=x                      | 400 | invalid-parameter  | syllables  | 3-5
          /words?position=start                   | 400 | invalid-parameter  | position   | phonogram
          /words?phonogram=oa&position=first      | 400 | invalid-parameter  | position   | start
          /words?commonness=0                     | 400 | invalid-parameter  | commonness | from 1 to 5
          /words?status=good                      | 400 | invalid-parameter  | status     | approved
          /words?include=everything               | 400 | invalid-parameter  | include    | names
          /words?rules=no-doubles                 | 400 | unknown-rule       | rules      | no-doubled
          /words?rules=ck,no-ck                   | 400 | invalid-parameter  | rules      | Choose one
          /words?taught=sh,zz                     | 400 | unknown-phonogram  | taught     | Did you mean
          /words?taught=sh9                       | 400 | unknown-value      | taught     | 1 (
          /words?sort=random                      | 400 | invalid-parameter  | sort       | spelling
          /words?limit=501                        | 400 | invalid-parameter  | limit      | from 1 to 500
          /words?limit=99999999999999999999       | 400 | invalid-parameter  | limit      | from 1 to 500
          /words?limit=1e2                        | 400 | invalid-parameter  | limit      | from 1 to 500
          /words?after=nonsense                   | 400 | invalid-cursor     | after      | next
          /words?after=AAAAAQAAAAEAAAAB           | 400 | invalid-cursor     | after      | next
          /words?edition=two                      | 400 | invalid-parameter  | edition    | whole number
          /words?edition=2                        | 404 | unknown-edition    | edition    | Leave edition out
          /words?format=xml                       | 406 | unsupported-format | format     | json, csv
          /sounds?format=csv                      | 406 | unsupported-format | format     | json
          /words?phonograms=oa                    | 400 | unknown-parameter  | phonograms | phonogram
          /words?PHONOGRAM=oa                     | 400 | unknown-parameter  | PHONOGRAM  | phonogram
          /words?%F0%9F%92%A9=1                   | 400 | unknown-parameter  | 💩         | phonogram
          /words?=1                               | 400 | unknown-parameter  | ?          | phonogram
          /words?limit=5&limit=6                  | 400 | repeated-parameter | limit      | only once
          /phonograms?value=1                     | 400 | unknown-parameter  | value      | accent
          /words/zebrafishes                      | 404 | unknown-word       | spelling   | word-checks
          /words/wooll                            | 404 | unknown-word       | spelling   | wool
          /words/w00l                             | 400 | invalid-word       | spelling   | a digit
          /words/caf%C3%A9                        | 400 | invalid-word       | spelling   | é
          /words/sh%C4%B1p                        | 400 | invalid-word       | spelling   | ı
          /words/%F0%9F%90%91                     | 400 | invalid-word       | spelling   | a to z
          /words/don't                            | 400 | invalid-word       | spelling   | an apostrophe
          /words/ice-cream                        | 400 | invalid-word       | spelling   | a hyphen
          /words/%20                              | 400 | invalid-word       | spelling   | empty
          /words/%3Cscript%3E                     | 400 | invalid-word       | spelling   | a to z
          /words/wool?accent=en-NZ                | 400 | unknown-accent     | accent     | en-US
          /words/wool?phonogram=oo                | 400 | unknown-parameter  | phonogram  | accent
          """)
  void refusesReads(String path, int status, String slug, String parameter, String advice)
      throws Exception {
    String encoded = API + path.replace("<", "%3C").replace(">", "%3E").replace("ı", "%C4%B1");
    assertProblem(server.get(encoded), status, slug, parameter, advice);
    assertThat(server.head(encoded).statusCode()).isEqualTo(status);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          /word-checks | {"words":[]}                               | invalid-body      | words      | at least one
          /word-checks | {}                                         | invalid-body      | words      | at least one
          /word-checks | {"words":"wool"}                           | invalid-body      | words      | a list
          /word-checks | {"words":["wool",5]}                       | invalid-body      | words[1]   | text
          /word-checks | {"words":["wool",true]}                    | invalid-body      | words[1]   | text
          /word-checks | {"words":["wool",null]}                    | invalid-body      | words[1]   | null
          /word-checks | {"words":["wool",["a"]]}                   | invalid-body      | words[1]   | text
          /word-checks | {"words":["wool",""]}                      | invalid-word      | words[1]   | empty
          /word-checks | {"words":["wool","w00l"]}                  | invalid-word      | words[1]   | a digit
          /word-checks | {"words":["café"]}                         | invalid-word      | words[0]   | é
          /word-checks | {"words":["shıp"]}                         | invalid-word      | words[0]   | ı
          /word-checks | {"words":["🐑"]}                           | invalid-word      | words[0]   | a to z
          /word-checks | {"words":["<b>wool</b>"]}                  | invalid-word      | words[0]   | a to z
          /word-checks | {"words":["'; drop table words; --"]}      | invalid-word      | words[0]   | a to z
          /word-checks | {"words":["wo\\u0000ol"]}                  | invalid-word      | words[0]   | �
          /word-checks | {"words":["wool"],"phonogram":"ao"}        | unknown-phonogram | phonogram  | oa
          /word-checks | {"words":["wool"],"phonogram":5}           | invalid-body      | phonogram  | text
          /word-checks | {"words":["wool"],"phonogram":null}        | invalid-body      | phonogram  | null
          /word-checks | {"words":["wool"],"phonogram":"oo","value":9} | unknown-value  | value      | 1 (
          /word-checks | {"words":["wool"],"phonogram":"oo","value":-1} | invalid-body  | value      | 1 (
          /word-checks | {"words":["wool"],"phonogram":"oo","value":"1"} | invalid-body | value      | a number
          /word-checks | {"words":["wool"],"phonogram":"oo","value":1.5} | invalid-body | value      | a number
          /word-checks | {"words":["wool"],"phonogram":"oo","value":1e99} | invalid-body | value     | number
          /word-checks | {"words":["wool"],"value":1}               | invalid-body      | value      | phonogram
          /word-checks | {"words":["wool"],"accents":["xx"]}        | unknown-accent    | accents[0] | en-US
          /word-checks | {"words":["wool"],"accents":"en-US"}       | invalid-body      | accents    | a list
          /word-checks | {"words":["wool"],"rules":"ckk"}           | unknown-rule      | rules      | ck
          /word-checks | {"words":["wool"],"rules":{"ck":false}}    | invalid-body      | rules      | text
          /word-checks | {"words":["wool"],"taught":["sh","zz"]}    | unknown-phonogram | taught[1]  | Did you mean
          /word-checks | {"words":["wool"],"word":["a"]}            | invalid-body      | word       | words
          /word-checks | {"words":["wool"],"words":["boat"]}        | invalid-json      |            | twice
          /word-checks | {"words":["wool"]} x                       | invalid-json      |            | no JSON
          /word-checks | {"words":["wool"]} {}                      | invalid-body      |            | one JSON object
          /word-checks | {"words":["wool"                           | invalid-json      |            | no JSON
          /word-checks | words=wool                                 | invalid-json      |            | no JSON
          /word-checks | null                                       | invalid-body      |            | null
          /word-checks | ["wool"]                                   | invalid-body      |            | object
          /word-checks | "wool"                                     | invalid-body      |            | object
          /word-checks | 5                                          | invalid-body      |            | object
          /alignments  | {}                                         | invalid-word      | spelling   | empty
          /alignments  | {"spelling":""}                            | invalid-word      | spelling   | empty
          /alignments  | {"spelling":"w00l"}                        | invalid-word      | spelling   | a digit
          /alignments  | {"spelling":["wool"]}                      | invalid-body      | spelling   | text
          /alignments  | {"spelling":"wool","sounds":""}            | invalid-body      | sounds     | leave it out
          /alignments  | {"spelling":"wool","sounds":"w ʘ l"}       | unknown-sound     | sounds     | oʊ
          /alignments  | {"spelling":"wool","sounds":7}             | invalid-body      | sounds     | text
          /alignments  | {"spelling":"wool","accent":"xx"}          | unknown-accent    | accent     | en-US
          /alignments  | {"spelling":"wool","accents":["en-US"]}    | invalid-body      | accents    | accent
          """)
  void refusesQuestions(String path, String body, String slug, String parameter, String advice)
      throws Exception {
    assertProblem(server.post(API + path, body), 400, slug, parameter, advice);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "wool"})
  void refusesWordsThatAreTooLong(String letters) throws Exception {
    String word = letters.repeat(200 / letters.length());
    assertProblem(server.get(API + "/words/" + word), 400, "invalid-word", "spelling", "too long");
    assertProblem(
        server.post(API + "/word-checks", "{\"words\":[\"" + word + "\"]}"),
        400,
        "invalid-word",
        "words[0]",
        "too long");
  }

  @Test
  void refusesTooManyWords() throws Exception {
    String words = String.join(",", Collections.nCopies(501, "\"wool\""));
    assertProblem(
        server.post(API + "/word-checks", "{\"words\":[" + words + "]}"),
        400,
        "too-many-words",
        "words",
        "500");
  }

  @Test
  void refusesBodiesThatAreTooLargeOrNotJson() throws Exception {
    String large = "{\"words\":[\"" + "a".repeat(1_100_000) + "\"]}";
    assertProblem(server.post(API + "/word-checks", large), 413, "body-too-large", null, "million");
    HttpResponse<String> form =
        server.post(API + "/word-checks", "words=wool", "Content-Type", "text/plain");
    assertProblem(form, 415, "unsupported-media-type", null, "application/json");
    String deep = "[".repeat(100_000);
    assertProblem(server.post(API + "/word-checks", deep), 400, null, null, "");
  }

  @Test
  void refusesQuestionsWithOtherParametersOrFormats() throws Exception {
    String body = "{\"words\":[\"wool\"]}";
    assertProblem(
        server.post(API + "/word-checks?phonogram=oo", body),
        400,
        "unknown-parameter",
        "phonogram",
        "here");
    HttpResponse<String> csv =
        server.post(
            API + "/word-checks", body, "Content-Type", "application/json", "Accept", "text/csv");
    assertProblem(csv, 406, "unsupported-format", "format", "json");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"image/png", "application/xml;q=1", "text/html", "rubbish", "text/csv;q=0"})
  void refusesHeadersThatAskForAnotherFormat(String accept) throws Exception {
    assertProblem(
        server.get(API + "/words?phonogram=oa", "Accept", accept),
        406,
        "unsupported-format",
        "format",
        "text/csv");
  }

  @Test
  void collectsAllThatIsWrong() throws Exception {
    HttpResponse<String> response =
        server.get(API + "/words?phonogram=ao&accent=xx&limit=0&sorted=no&edition=9&format=xml");
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(server.json(response).findValuesAsText("parameter"))
        .containsExactlyInAnyOrder("sorted", "phonogram", "accent", "limit", "edition", "format");
  }

  @Test
  void readsNoMoreOfARequestThanIsReasonable() throws Exception {
    String many = "x&".repeat(2000);
    HttpResponse<String> response = server.get(API + "/words?" + many.substring(0, 3999));
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(response.body()).hasSizeLessThan(20_000);
    String distinct = String.join("&", IntStream.range(0, 1000).mapToObj(i -> "p" + i).toList());
    assertThat(server.get(API + "/words?" + distinct).body()).hasSizeLessThan(20_000);
  }

  @ParameterizedTest
  @CsvSource({
    "GET, /api/v1/nothing, 404, not-found",
    "GET, /api/v2/words, 404, not-found",
    "DELETE, /api/v1/words, 405, method-not-allowed",
    "GET, /api/v1/word-checks, 405, method-not-allowed",
    "POST, /api/v1/words, 405, method-not-allowed",
  })
  void refusesOtherAddressesAndMethods(String method, String path, int status, String slug)
      throws Exception {
    assertProblem(server.send(method, path), status, slug, null, "");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/v1/words?phonogram=%",
        "/api/v1/words?phonogram=%zz",
        "/api/v1/words?%=%",
        "/api/v1/words?phonogram=oa&&&=",
        "/api/v1/words/%00",
        "/api/v1/words/%2e%2e%2fetc",
        "/api/v1/words/%ff",
        "/api/v1/words/a%2Fb",
        "/api/v1/words/a;b",
        "/api/v1/words/\u0001",
        "/api/v1/words?phonogram=\u0001",
        "/api/v1/sounds/%00",
        "//api//v1/words",
      })
  void answersNoAddressWithAFault(String target) throws Exception {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      String request = "GET %s HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.formatted(target).getBytes(UTF_8));
      String answer = new String(socket.getInputStream().readAllBytes(), UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 4").contains("/docs/problems#");
    }
  }

  @Test
  void foldsCapitals() throws Exception {
    assertThat(server.json(API + "/words/WooL").at("/word/spelling").asText()).isEqualTo("wool");
    assertThat(server.json(API + "/words?phonogram=OA").at("/query/phonogram").asText())
        .isEqualTo("oa");
    assertThat(
            server
                .json(server.post(API + "/word-checks", "{\"words\":[\"SHIP\",\"Ship\"]}"))
                .findValuesAsText("word"))
        .isEqualTo(List.of("ship", "ship"));
  }

  private void assertProblem(
      HttpResponse<String> response,
      int status,
      @Nullable String slug,
      @Nullable String parameter,
      String advice)
      throws Exception {
    assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
    JsonNode problem = server.json(response);
    if (slug != null) {
      assertThat(problem.path("type").asText()).isEqualTo("/docs/problems#" + slug);
    }
    if (parameter != null) {
      assertThat(problem.at("/errors/0/parameter").asText()).isEqualTo(parameter);
    }
    assertThat(problem.path("detail").asText()).isNotBlank().contains(advice);
    assertThat(response.body()).doesNotContain("org.hedgerow", "java.", "Exception");
  }
}
