package org.hedgerow.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.util.List;
import org.hedgerow.web.testing.ApiServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables hold the whole list and say so; lists of accents may be written in several ways. */
class WholeTablesTest {
  private static final String LONG_LIST = "/api/v1/words?syllables=1&commonness=1";
  private static final ObjectMapper JSON = new ObjectMapper();

  private static ApiServer server;

  @BeforeAll
  static void start() {
    server = ApiServer.start();
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @ParameterizedTest
  @ValueSource(strings = {"ndjson", "text"})
  void linesAreWhole(String format) throws Exception {
    HttpResponse<String> answer = server.get(LONG_LIST + "&format=" + format);
    assertThat(answer.body().lines()).hasSize(total()).hasSizeGreaterThan(500);
    assertThat(header(answer, "Hedgerow-Total")).isEqualTo(String.valueOf(total()));
    assertThat(header(answer, "Hedgerow-Edition")).isEqualTo("1");
    assertThat(answer.headers().firstValue("Link")).isEmpty();
  }

  @Test
  void theSpreadsheetIsWhole() throws Exception {
    HttpResponse<String> answer = server.get(LONG_LIST + "&format=csv");
    assertThat(answer.body().lines().skip(1).map(line -> line.split(",", 2)[0]).distinct())
        .hasSize(total());
    assertThat(header(answer, "Access-Control-Expose-Headers"))
        .contains("Hedgerow-Edition", "Hedgerow-Total");
  }

  @Test
  void aTableMayBeAskedForInParts() throws Exception {
    HttpResponse<String> answer = server.get(LONG_LIST + "&format=text&limit=600");
    assertThat(answer.body().lines()).hasSize(600);
    String next = header(answer, "Link").replaceAll("^<|>.*$", "");
    assertThat(server.get(next).body().lines()).hasSize(total() - 600);
  }

  @ParameterizedTest
  @CsvSource({"&format=text&limit=5001, 5000", "&limit=501, 500"})
  void thereIsABound(String more, String bound) throws Exception {
    HttpResponse<String> answer = server.get(LONG_LIST + more);
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("from 1 to " + bound);
  }

  @Test
  void jsonStillComesInParts() throws Exception {
    HttpResponse<String> answer = server.get(LONG_LIST);
    assertThat(JSON.readTree(answer.body()).path("words")).hasSize(50);
    assertThat(header(answer, "Hedgerow-Total")).isEqualTo(String.valueOf(total()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"words?phonogram=oa", "phonograms?", "needs?"})
  void aSpreadsheetMayBeginWithAMark(String path) throws Exception {
    String plain = server.get("/api/v1/%s&format=csv".formatted(path)).body();
    String marked = server.get("/api/v1/%s&format=csv&bom=true".formatted(path)).body();
    assertThat(marked).isEqualTo("\uFEFF" + plain);
    assertThat(server.get("/api/v1/%s&bom=true".formatted(path)).statusCode()).isEqualTo(400);
  }

  @Test
  void phonogramsMakeATable() throws Exception {
    assertThat(server.get("/api/v1/phonograms?format=csv").body().lines())
        .hasSizeGreaterThan(100)
        .anyMatch(line -> line.startsWith("oa,1,en-US,oʊ,phonogram,boat,"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"words?phonogram=oa&limit=5", "words/boat?", "sentences?", "needs?"})
  void accentsAreAListEitherWay(String path) throws Exception {
    String once = server.get("/api/v1/%s&accent=en-US,en-GB".formatted(path)).body();
    String twice = server.get("/api/v1/%s&accent=en-US&accent=en-GB".formatted(path)).body();
    assertThat(twice).isEqualTo(once).contains("en-GB");
  }

  @Test
  void severalAccentsWhereOneIsMeantAreToldSo() throws Exception {
    HttpResponse<String> answer = server.get("/api/v1/sounds?accent=en-US&accent=en-GB");
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("accent takes one accent here");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"accent\": [\"en-GB\"]", "\"accents\": [\"en-GB\"]"})
  void bodiesNameAccentsByBothNames(String accents) throws Exception {
    JsonNode words = post("/word-checks", "{\"words\": [\"boat\"], %s}".formatted(accents));
    JsonNode sentence = post("/sentence-checks", "{\"text\": \"A boat.\", %s}".formatted(accents));
    for (JsonNode query : List.of(words.path("query"), sentence.path("query"))) {
      assertThat(query.path("accent").toString()).isEqualTo("[\"en-GB\"]");
      assertThat(query.path("accents")).isEqualTo(query.path("accent"));
    }
  }

  @Test
  void bothNamesAtOnceAreAMistake() throws Exception {
    JsonNode problem =
        post(
            "/word-checks",
            "{\"words\": [\"boat\"], \"accent\": [\"en-US\"], \"accents\": [\"en-GB\"]}");
    assertThat(problem.path("detail").asText() + problem.path("errors"))
        .contains("accents is the older name of accent");
  }

  @Test
  void emptyListsAreTheSameAsNone() throws Exception {
    JsonNode plain = post("/word-checks", "{\"words\": [\"boat\"]}");
    assertThat(post("/word-checks", "{\"words\": [\"boat\"], \"accent\": [], \"accents\": []}"))
        .isEqualTo(plain);
  }

  private static int total() throws Exception {
    return JSON.readTree(server.get(LONG_LIST + "&limit=1").body()).path("total").asInt();
  }

  private static JsonNode post(String path, String body) throws Exception {
    return JSON.readTree(server.post("/api/v1" + path, body).body());
  }

  private static String header(HttpResponse<String> answer, String name) {
    return answer.headers().firstValue(name).orElse("");
  }
}
