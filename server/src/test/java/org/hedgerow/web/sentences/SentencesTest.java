package org.hedgerow.web.sentences;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.hedgerow.seed.SeededComposer;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.testing.ApiServer;
import org.hedgerow.web.testing.SmallPace;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences checked and composed over HTTP, each answer held against the document. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SentencesTest {

  private static final String CHECKS = "/api/v1/sentence-checks";
  private static final String SENTENCES = "/api/v1/sentences";
  private static final String DRAFTS = "/api/v1/sentence-drafts";

  private ApiServer server;

  @BeforeAll
  void start() {
    server = ApiServer.start();
  }

  @AfterAll
  void stop() {
    server.close();
  }

  private JsonNode post(String path, String body) throws Exception {
    HttpResponse<String> response = server.post(path, body);
    assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
    return server.json(response);
  }

  @Test
  void aSentenceIsJudgedWordByWord() throws Exception {
    JsonNode answer = post(CHECKS, "{\"text\":\"The goat sat by the tree.\",\"phonogram\":\"oa\"}");
    assertThat(answer.path("verdict").asText()).isEqualTo("fail");
    assertThat(answer.path("targets").asInt()).isEqualTo(1);
    assertThat(answer.path("tokens").findValuesAsText("judgement"))
        .containsExactly("sight-word", "target", "phonetic", "sight-word", "sight-word", "blocked");
    assertThat(answer.at("/tokens/1/letters").toString()).isEqualTo("[1,2]");
    assertThat(answer.at("/tokens/5/replacements")).isNotEmpty();
    assertThat(answer.path("findings").findValuesAsText("code"))
        .containsExactly("blocked-words", "too-few-targets");
    assertThat(answer.at("/query/minimum").asInt()).isEqualTo(3);
  }

  @Test
  void howManyTargetsAndWordsMayBeSaid() throws Exception {
    JsonNode answer =
        post(
            CHECKS,
            "{\"text\":\"The goat is big.\",\"phonogram\":\"oa\",\"minimum\":1,\"maximum\":4}");
    assertThat(answer.path("verdict").asText()).isEqualTo("pass");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"phonogram":"oa"}                                      | invalid-body
          {"text":"  ","phonogram":"oa"}                          | invalid-body
          {"text":"A cat.","phonogram":"zz"}                      | unknown-phonogram
          {"text":"A cat.","phonogram":"oa","value":9}            | unknown-value
          {"text":"A cat.","phonogram":"oa","accents":["fr-FR"]}  | unknown-accent
          {"text":"A cat.","phonogram":"oa","minimum":-1}         | invalid-body
          {"text":"A cat.","phonogram":"oa","maximum":1000}       | invalid-body
          {"text":"A cat.","phonogram":"oa","sightWords":"mine"}  | invalid-body
          """)
  void badQuestionsAreToldWhatToDo(String body, String problem) throws Exception {
    HttpResponse<String> response = server.post(CHECKS, body);
    assertThat(response.statusCode()).as(response.body()).isEqualTo(400);
    assertThat(response.body()).contains("/docs/problems#" + problem);
  }

  @Test
  void aTextOfTenThousandWordsIsRefusedClearly() throws Exception {
    HttpResponse<String> response =
        server.post(CHECKS, "{\"text\":\"" + "goat ".repeat(10_000) + "\",\"phonogram\":\"oa\"}");
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(response.body()).contains("too-many-words");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "🐐🐐🐐",
        "<script>alert(1)</script>",
        "الماعز على القارب",
        "The \\u0000 goat",
        "''''",
        "\\n\\t\\n.",
        "😀 goat’’s"
      })
  void anyTextIsAnswered(String text) throws Exception {
    JsonNode answer = post(CHECKS, "{\"text\":\"" + text + "\",\"phonogram\":\"oa\"}");
    assertThat(answer.path("verdict").asText()).isEqualTo("fail");
  }

  @Test
  void composedSentencesPassTheirCheck() throws Exception {
    JsonNode answer =
        post(
            DRAFTS,
            "{\"phonogram\":\"oa\",\"value\":1,\"accents\":[\"en-US\",\"en-GB\"],\"count\":10}");
    assertThat(answer.path("sentences")).hasSize(10);
    List<String> texts = answer.path("sentences").findValuesAsText("text");
    for (JsonNode sentence : answer.path("sentences")) {
      assertThat(sentence.at("/check/verdict").asText()).as(sentence.toString()).isEqualTo("pass");
      assertThat(sentence.at("/check/targets").asInt()).isGreaterThanOrEqualTo(3);
    }
    assertThat(texts).isNotEmpty();
    assertThat(answer.has("missing")).isFalse();
  }

  @Test
  void theSameSeedGivesTheSameSentences() throws Exception {
    String order = "{\"phonogram\":\"ai\",\"count\":5,\"seed\":%d}";
    JsonNode once = post(DRAFTS, order.formatted(3));
    assertThat(post(DRAFTS, order.formatted(3))).isEqualTo(once);
    assertThat(post(DRAFTS, order.formatted(4)).path("sentences"))
        .isNotEqualTo(once.path("sentences"));
  }

  @Test
  void wordsAndKindsCanBeAskedFor() throws Exception {
    JsonNode answer =
        post(
            DRAFTS,
            "{\"phonogram\":\"oa\",\"count\":5,\"words\":[\"toad\"],\"kinds\":[\"question\"]}");
    assertThat(answer.path("sentences")).hasSize(5);
    for (JsonNode sentence : answer.path("sentences")) {
      assertThat(sentence.path("text").asText()).containsIgnoringCase("toad").endsWith("?");
    }
  }

  @Test
  void whereEnglishHasTooFewWordsItSaysWhatIsMissing() throws Exception {
    JsonNode answer = post(DRAFTS, "{\"phonogram\":\"oa\",\"minimum\":20,\"maximum\":40}");
    assertThat(answer.path("sentences")).isEmpty();
    assertThat(answer.at("/missing/message").asText()).contains("None of 10");
    assertThat(answer.at("/missing/targets")).isNotEmpty();
  }

  @Test
  void ordersAreLimitedForEachClientAndRepeatsAreFree() throws Exception {
    SentenceOrders orders = new SentenceOrders(SeededComposer.get(), SmallPace.of(1));
    try (ApiServer small = ApiServer.start(SeededLexicon.editions(), orders)) {
      String order = "{\"phonogram\":\"ai\",\"count\":1,\"seed\":%d}";
      HttpResponse<String> made = small.post(DRAFTS, order.formatted(3));
      assertThat(made.headers().firstValue("RateLimit")).hasValue("\"tests\";r=0;t=60");
      HttpResponse<String> again = small.post(DRAFTS, order.formatted(3));
      assertThat(again.statusCode()).isEqualTo(200);
      assertThat(again.body()).isEqualTo(made.body());
      HttpResponse<String> refused = small.post(DRAFTS, order.formatted(4));
      assertThat(refused.statusCode()).isEqualTo(429);
      assertThat(refused.headers().firstValueAsLong("Retry-After")).isPresent();
      assertThat(refused.body()).contains("too many tests", "Try again in");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"phonogram\":\"oa\",\"count\":0}",
        "{\"phonogram\":\"oa\",\"count\":10000}",
        "{\"phonogram\":\"oa\",\"kinds\":[\"song\"]}",
        "{\"phonogram\":\"oa\",\"words\":[\"a\",\"b\",\"c\",\"d\",\"e\",\"f\"]}"
      })
  void badOrdersAreToldWhatToDo(String body) throws Exception {
    HttpResponse<String> response = server.post(DRAFTS, body);
    assertThat(response.statusCode()).as(response.body()).isEqualTo(400);
    assertThat(response.body()).contains("/docs/problems#invalid-body");
  }

  @Test
  void sentencesOfOneOrderAreAllDifferent() throws Exception {
    JsonNode answer = post(DRAFTS, "{\"phonogram\":\"ee\",\"count\":50}");
    List<String> texts =
        answer.path("sentences").valueStream().map(each -> each.path("text").asText()).toList();
    assertThat(new LinkedHashSet<>(texts)).hasSize(50);
  }

  private JsonNode get(String path) throws Exception {
    HttpResponse<String> response = server.get(path);
    assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
    return server.json(response);
  }

  private static List<String> texts(JsonNode list) {
    return list.get("sentences").findValuesAsText("text");
  }

  @Test
  void aLongListIsReadPieceByPiece() throws Exception {
    List<String> all = texts(get(SENTENCES + "?limit=500"));
    List<String> read = new ArrayList<>();
    String next = SENTENCES + "?limit=60";
    while (!next.isEmpty()) {
      JsonNode part = get(next);
      assertThat(part.get("total").asInt()).isEqualTo(all.size());
      assertThat(part.get("sentences").size()).isBetween(1, 60);
      read.addAll(texts(part));
      next = part.has("next") ? SENTENCES + "?limit=60&after=" + part.get("next").asText() : "";
    }
    assertThat(all).hasSizeGreaterThan(120);
    assertThat(read).isEqualTo(all);
  }

  @Test
  void theHeaderNamesTheNextPieceInTheSameFormat() throws Exception {
    HttpResponse<String> first = server.get(SENTENCES + "?phonogram=oa&limit=2&format=text");
    String link = first.headers().firstValue("Link").orElseThrow();
    String next = link.substring(1, link.indexOf('>'));
    String all = server.get(SENTENCES + "?phonogram=oa&limit=4&format=text").body();
    assertThat(first.body() + server.get(next).body()).isEqualTo(all);
    assertThat(server.get(SENTENCES + "?phonogram=oa").headers().firstValue("Link")).isEmpty();
  }

  @Test
  void aCursorOfAnotherListIsRefused() throws Exception {
    String next = get(SENTENCES + "?phonogram=oa&limit=2").get("next").asText();
    for (String query :
        List.of("?phonogram=ee&after=" + next, "?after=nonsense", "?phonogram=oa&limit=0")) {
      assertThat(server.get(SENTENCES + query).statusCode()).as(query).isEqualTo(400);
    }
  }
}
