package org.hedgerow.web.words;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.hedgerow.web.testing.ApiServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What reads answer, in every format and however they are asked. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReadsTest {

  private static final String API = "/api/v1";
  private static final String WORDS = API + "/words?phonogram=oa";

  private ApiServer server;

  @BeforeAll
  void start() {
    server = ApiServer.start();
  }

  @AfterAll
  void stop() {
    server.close();
  }

  @Test
  void listsPhonogramsWithTheSameCountsAsTheirLists() throws Exception {
    JsonNode phonograms = server.json(API + "/phonograms").path("phonograms");
    assertThat(phonograms.findValuesAsText("grapheme")).contains("oa", "igh", "i-e").isSorted();
    for (String grapheme : List.of("oa", "i-e", "igh")) {
      JsonNode value = value(phonograms, grapheme);
      int listed = server.json(API + "/words?phonogram=" + grapheme).path("total").asInt();
      assertThat(value.at("/words/total").asInt()).isEqualTo(listed);
      assertThat(value.at("/words/approved").asInt() + value.at("/words/seeded").asInt())
          .isEqualTo(listed);
    }
    assertThat(value(phonograms, "oa").path("sound").asText()).isEqualTo("oʊ");
  }

  private static JsonNode value(JsonNode phonograms, String grapheme) {
    for (JsonNode each : phonograms) {
      if (each.path("grapheme").asText().equals(grapheme)) {
        return each.at("/values/0");
      }
    }
    throw new AssertionError("no " + grapheme);
  }

  @Test
  void showsTheTargetInEveryWordOfAList() throws Exception {
    JsonNode answer = server.json(API + "/words?phonogram=oo&value=2&limit=3");
    assertThat(answer.path("edition").asInt()).isEqualTo(1);
    assertThat(answer.path("words")).hasSize(3);
    for (JsonNode word : answer.path("words")) {
      for (JsonNode pronunciation : word.path("pronunciations")) {
        List<JsonNode> targets = new ArrayList<>();
        pronunciation.path("spans").forEach(span -> collectTarget(span, targets));
        assertThat(targets).hasSize(1);
        assertThat(targets.get(0).path("grapheme").asText()).isEqualTo("oo");
        assertThat(targets.get(0).path("value").asInt()).isEqualTo(2);
      }
    }
  }

  private static void collectTarget(JsonNode span, List<JsonNode> targets) {
    if (span.path("target").asBoolean()) {
      targets.add(span);
    }
  }

  @Test
  void repeatsTheQuestionSoThatItCanBeAskedAgain() throws Exception {
    JsonNode query =
        server.json(WORDS + "&taught=sh,oo2&letters=3-6&include=inflected").path("query");
    StringBuilder again = new StringBuilder();
    query
        .properties()
        .forEach(
            field -> {
              String value =
                  field.getValue().isArray()
                      ? String.join(",", texts(field.getValue()))
                      : field.getValue().asText();
              if (!value.isEmpty()) {
                again
                    .append(again.isEmpty() ? "?" : "&")
                    .append(field.getKey())
                    .append("=")
                    .append(value);
              }
            });
    assertThat(server.json(API + "/words" + again).path("query")).isEqualTo(query);
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(each -> texts.add(each.asText()));
    return texts;
  }

  @Test
  void pagesWithoutLossInEveryFormat() throws Exception {
    List<String> all = spellings("text", WORDS + "&limit=500&format=text");
    List<String> paged = new ArrayList<>();
    String path = WORDS + "&limit=9&format=text";
    while (!path.isEmpty()) {
      HttpResponse<String> page = server.get(path);
      paged.addAll(page.body().lines().toList());
      path =
          page.headers()
              .firstValue("Link")
              .map(link -> link.substring(1, link.indexOf('>')))
              .orElse("");
    }
    assertThat(paged).isEqualTo(all).hasSizeGreaterThan(40);
    assertThat(spellings("csv", WORDS + "&limit=500&format=csv")).containsAll(all);
    assertThat(spellings("ndjson", WORDS + "&limit=500&format=ndjson")).isEqualTo(all);
  }

  private List<String> spellings(String format, String path) throws Exception {
    List<String> lines = server.get(path).body().lines().toList();
    return switch (format) {
      case "csv" ->
          lines.stream().skip(1).map(line -> line.substring(0, line.indexOf(','))).toList();
      case "ndjson" -> lines.stream().map(line -> line.split("\"", 5)[3]).toList();
      default -> lines;
    };
  }

  @Test
  void writesTablesForSpreadsheets() throws Exception {
    String table = server.get(WORDS + "&format=csv&letters=4").body();
    assertThat(table.split("\r\n", -1))
        .startsWith(
            "spelling,status,commonness,syllables,accent,sounds,graphemes,target,picturable,starter",
            "boat,seeded,5,1,en-US,b oʊ t,b oa t,oa,3,yes")
        .endsWith("");
  }

  @ParameterizedTest
  @CsvSource({
    "text/csv, text/csv",
    "application/x-ndjson, application/x-ndjson",
    "text/plain, text/plain",
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet, application/vnd.open",
    "application/json, application/json",
    "*/*, application/json",
    "'text/html,application/xhtml+xml,*/*;q=0.8', application/json",
    "'application/json;q=0.5, text/csv', text/csv",
    "'text/csv;q=0, text/*', text/plain",
    "APPLICATION/JSON, application/json",
  })
  void choosesTheFormatByTheHeader(String accept, String contentType) throws Exception {
    HttpResponse<String> response = server.get(WORDS, "Accept", accept);
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.headers().firstValue("Content-Type").orElse("")).startsWith(contentType);
    assertThat(response.headers().firstValue("Vary").orElse("")).contains("Accept");
  }

  @Test
  void letsTheParameterBeatTheHeader() throws Exception {
    assertThat(server.get(WORDS + "&format=text", "Accept", "application/json").body())
        .startsWith("boat\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/phonograms",
        "/words?phonogram=oa",
        "/words?phonogram=oa&format=csv",
        "/words/wool",
        "/sounds",
        "/sounds/OW"
      })
  void answersNotModifiedToWhoeverHasTheAnswer(String path) throws Exception {
    String tag = server.get(API + path).headers().firstValue("ETag").orElseThrow();
    assertThat(tag).matches("\"1-[!#-~]+\"");
    for (String condition :
        List.of(tag, "W/" + tag, "\"other\", " + tag, "\"a,b\",W/\"c\"," + tag, "*")) {
      HttpResponse<String> response = server.get(API + path, "If-None-Match", condition);
      assertThat(response.statusCode()).as(condition).isEqualTo(304);
      assertThat(response.body()).isEmpty();
      assertThat(response.headers().firstValue("ETag")).contains(tag);
      assertThat(server.head(API + path, "If-None-Match", condition).statusCode()).isEqualTo(304);
    }
    for (String condition : List.of("\"other\"", "W/\"1-x\"", tag.replace("\"", ""))) {
      assertThat(server.get(API + path, "If-None-Match", condition).statusCode()).isEqualTo(200);
    }
  }

  @Test
  void tagsEachRepresentationByItself() throws Exception {
    List<String> tags = new ArrayList<>();
    for (String format : List.of("json", "csv", "ndjson", "text")) {
      tags.add(
          server
              .get(WORDS, "Accept-Encoding", "identity", "Accept", type(format))
              .headers()
              .firstValue("ETag")
              .orElseThrow());
    }
    tags.add(
        server.bytes(WORDS, "Accept-Encoding", "gzip").headers().firstValue("ETag").orElseThrow());
    assertThat(tags).doesNotHaveDuplicates();
    String compressed = tags.get(4);
    assertThat(server.get(WORDS, "If-None-Match", compressed).statusCode()).isEqualTo(304);
  }

  private static String type(String format) {
    return switch (format) {
      case "csv" -> "text/csv";
      case "ndjson" -> "application/x-ndjson";
      case "text" -> "text/plain";
      default -> "application/json";
    };
  }

  @Test
  void compressesForWhoeverUnderstandsIt() throws Exception {
    byte[] plain = server.bytes(WORDS).body();
    HttpResponse<byte[]> compressed = server.bytes(WORDS, "Accept-Encoding", "br, gzip");
    assertThat(compressed.headers().firstValue("Content-Encoding")).contains("gzip");
    assertThat(compressed.body()).hasSizeLessThan(plain.length / 4);
    assertThat(new GZIPInputStream(new ByteArrayInputStream(compressed.body())).readAllBytes())
        .isEqualTo(plain);
    assertThat(server.bytes(WORDS, "Accept-Encoding", "gzip;q=0").body()).isEqualTo(plain);
    assertThat(
            server.bytes(WORDS + "&limit=1&format=csv", "Accept-Encoding", "gzip").headers().map())
        .doesNotContainKey("content-encoding");
  }

  @Test
  void answersHeadLikeGetWithoutTheBody() throws Exception {
    HttpResponse<String> get = server.get(WORDS);
    HttpResponse<String> head = server.head(WORDS);
    assertThat(head.statusCode()).isEqualTo(200);
    assertThat(head.body()).isEmpty();
    for (String name : List.of("ETag", "Content-Type", "Cache-Control", "Content-Length")) {
      assertThat(head.headers().firstValue(name))
          .isEqualTo(get.headers().firstValue(name))
          .isPresent();
    }
  }

  @Test
  void letsPagesOfOtherSitesRead() throws Exception {
    for (String path : List.of("/words?phonogram=oa", "/words?phonogram=ao", "/nowhere")) {
      assertThat(
              server
                  .get(API + path, "Origin", "https://example.org")
                  .headers()
                  .firstValue("Access-Control-Allow-Origin"))
          .contains("*");
    }
    assertThat(server.get("/docs").headers().map())
        .doesNotContainKey("access-control-allow-origin");
  }

  @ParameterizedTest
  @CsvSource({"/words, GET", "/words/wool, GET", "/word-checks, POST", "/alignments, POST"})
  void givesLeaveBeforeTheRequest(String path, String method) throws Exception {
    HttpResponse<String> leave =
        server.options(
            API + path,
            "Origin",
            "https://example.org",
            "Access-Control-Request-Method",
            method,
            "Access-Control-Request-Headers",
            "content-type");
    assertThat(leave.statusCode()).isEqualTo(204);
    assertThat(leave.headers().firstValue("Access-Control-Allow-Origin")).contains("*");
    assertThat(leave.headers().firstValue("Access-Control-Allow-Methods").orElse(""))
        .contains(method);
    assertThat(leave.headers().firstValue("Access-Control-Allow-Headers").orElse(""))
        .containsIgnoringCase("content-type");
  }

  @Test
  void tellsEverythingOfAWord() throws Exception {
    JsonNode answer = server.json(API + "/words/Boats");
    assertThat(answer.at("/word/spelling").asText()).isEqualTo("boats");
    assertThat(answer.at("/word/inflectionOf").asText()).isEqualTo("boat");
    assertThat(answer.at("/word/pronunciations/0/arpabet").asText()).isEqualTo("B OW1 T S");
    assertThat(answer.at("/check/verdict").asText()).isEqualTo("fail");
    assertThat(answer.at("/check/findings").findValuesAsText("code")).contains("second-phonogram");
  }

  @Test
  void answersFromAPinnedEdition() throws Exception {
    assertThat(server.get(WORDS + "&edition=1").body()).isEqualTo(server.get(WORDS).body());
  }

  /**
   * Of the shares of spellings, only what every count agrees on; Hanna et al. (1966), from memory:
   * ow, oa, o-e and o all spell it, o the most often, and ee and ea are behind y and e for /i/.
   */
  @Test
  void tellsTheFamilyOfASound() throws Exception {
    JsonNode family = server.json(API + "/sounds/OW");
    assertThat(family.path("sound").asText()).isEqualTo("oʊ");
    assertThat(family.path("spellings").findValuesAsText("grapheme"))
        .startsWith("o")
        .contains("o-e", "oa", "ow", "oe");
    double shares = 0;
    for (JsonNode spelling : family.path("spellings")) {
      shares += spelling.path("share").asDouble();
      assertThat(spelling.path("keyWord").asText()).isNotEmpty();
    }
    assertThat(shares).isBetween(0.99, 1.01);
    assertThat(server.get(API + "/sounds/o%CA%8A").body())
        .isEqualTo(server.get(API + "/sounds/OW").body());
  }

  @Test
  void listsTheSoundsOfTheAccent() throws Exception {
    JsonNode sounds = server.json(API + "/sounds").path("sounds");
    assertThat(sounds).hasSize(41);
    assertThat(sounds.findValuesAsText("arpabet"))
        .contains("AH", "AH0", "ER", "ER0", "SH")
        .doesNotHaveDuplicates();
    assertThat(sounds.findValuesAsText("keyWord")).allMatch(word -> !word.isEmpty());
  }

  @Test
  void servesTheDocumentAndItsPages() throws Exception {
    assertThat(server.get(API + "/openapi.yaml").body()).startsWith("openapi: 3.1");
    for (String page : List.of("/docs", "/docs/problems", "/health/live", "/metrics")) {
      assertThat(server.get(page).statusCode()).isEqualTo(200);
    }
    for (String file : List.of("swagger-ui.css", "swagger-ui-bundle.js", "start.js", "docs.css")) {
      HttpResponse<byte[]> asset = server.bytes("/docs/ui/" + file);
      assertThat(asset.statusCode()).isEqualTo(200);
      assertThat(new String(asset.body(), UTF_8)).isNotBlank();
    }
    assertThat(server.bytes("/docs/ui/pom.xml").statusCode()).isEqualTo(404);
  }

  @Test
  void servesPicturesThatMayDoNothing() throws Exception {
    JsonNode word = server.json(server.get("/api/v1/words/cat")).get("word");
    assertThat(word.get("picturable").asInt()).isEqualTo(3);
    JsonNode picture = word.get("picture");
    assertThat(picture.get("licence").asText()).isEqualTo("CC BY-SA 4.0");
    assertThat(picture.get("author").asText()).isNotBlank();
    HttpResponse<String> svg = server.get(picture.get("href").asText());
    assertThat(svg.statusCode()).isEqualTo(200);
    assertThat(svg.body()).startsWith("<svg ");
    assertThat(svg.headers().firstValue("Content-Type")).contains("image/svg+xml; charset=utf-8");
    assertThat(svg.headers().firstValue("Content-Security-Policy").orElse(""))
        .contains("default-src 'none'", "sandbox");
    assertThat(svg.headers().firstValue("Cache-Control").orElse("")).contains("immutable");
  }

  @Test
  void knowsNoOtherPictures() throws Exception {
    HttpResponse<String> answer = server.get("/api/v1/pictures/openmoji-none");
    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(answer.body()).contains("/docs/problems#not-found");
    assertThat(server.get("/api/v1/pictures/openmoji-1f408?size=3").statusCode()).isEqualTo(400);
  }

  @Test
  void narrowsByTags() throws Exception {
    JsonNode list =
        server.json(
            server.get(
                "/api/v1/words?phonogram=oa&picturable=3&pictured=true&part-of-speech=noun"
                    + "&meaning=animal&mark=starter&sort=picturable"));
    assertThat(list.get("words").findValuesAsText("spelling"))
        .contains("goat")
        .doesNotContain("coat", "toad");
    assertThat(list.get("words"))
        .allSatisfy(word -> assertThat(word.get("meanings").toString()).contains("animal"));
  }

  @Test
  void listsWordsThatChangeBetweenAccents() throws Exception {
    JsonNode list = server.json(server.get("/api/v1/words?shape=cvc&differs-in=en-GB&limit=500"));
    assertThat(list.get("words").findValuesAsText("spelling"))
        .contains("pass")
        .doesNotContain("cat", "dog");
  }

  @Test
  void whatIsGoneThroughBeforeTheStartFailsNowhere() {
    assertThat(server.rehearsals()).isNotEmpty().allSatisfy(Runnable::run);
  }
}
