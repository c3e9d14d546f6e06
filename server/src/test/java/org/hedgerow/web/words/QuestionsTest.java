package org.hedgerow.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import org.hedgerow.web.testing.ApiServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is answered to questions that are sent as JSON. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class QuestionsTest {

  private static final String CHECKS = "/api/v1/word-checks";
  private static final String ALIGNMENTS = "/api/v1/alignments";

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
    return server.json(server.post(path, body));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"words":["boat"],"phonogram":"oa"}                   | pass |
          {"words":["cat"],"phonogram":"oa"}                    | fail | no-target
          {"words":["moon"],"phonogram":"oo","value":2}         | fail | other-value
          {"words":["sheep"],"phonogram":"ee"}                  | fail | second-phonogram
          {"words":["sheep"],"phonogram":"ee","taught":["sh"]}  | pass |
          {"words":["duck"]}                                    | pass |
          {"words":["duck"],"rules":"no-ck"}                    | fail | second-phonogram
          {"words":["cats"]}                                    | fail | inflected
          {"words":["cats"],"rules":"inflected-forms"}          | pass |
          {"words":["mishap"]}                                  | fail | false-pair
          {"words":["CAT"],"accents":["en-us"]}                 | pass |
          """)
  void judgesWords(String body, String verdict, String code) throws Exception {
    JsonNode check = post(CHECKS, body).at("/checks/0");
    assertThat(check.path("verdict").asText()).as(check.toString()).isEqualTo(verdict);
    assertThat(check.path("findings").findValuesAsText("code"))
        .isEqualTo(
            code == null
                ? Collections.emptyList()
                : check.path("findings").findValuesAsText("code"));
    if (code != null) {
      assertThat(check.path("findings").findValuesAsText("code")).contains(code);
    }
  }

  @Test
  void judgesFiveHundredWordsInTheirOrder() throws Exception {
    String words = String.join(",", Collections.nCopies(250, "\"boat\",\"goat\""));
    JsonNode answer = post(CHECKS, "{\"words\":[" + words + "],\"phonogram\":\"oa\"}");
    assertThat(answer.path("checks")).hasSize(500);
    assertThat(answer.at("/checks/498/word").asText()).isEqualTo("boat");
    assertThat(answer.at("/checks/499/word").asText()).isEqualTo("goat");
    assertThat(answer.at("/query/value").asInt()).isEqualTo(1);
  }

  @Test
  void admitsThatItGuesses() throws Exception {
    JsonNode check = post(CHECKS, "{\"words\":[\"bloab\"],\"phonogram\":\"oa\"}").at("/checks/0");
    assertThat(check.path("guessed").asBoolean()).isTrue();
    assertThat(check.path("verdict").asText()).isEqualTo("look");
    assertThat(check.path("findings").findValuesAsText("code")).contains("unknown-word");
  }

  @Test
  void alignsAWordByItsSoundsInAnyNotation() throws Exception {
    JsonNode ipa = post(ALIGNMENTS, "{\"spelling\":\"bloab\",\"sounds\":\"b l oʊ b\"}");
    assertThat(ipa.path("aligned").asBoolean()).isTrue();
    assertThat(ipa.path("guessed").asBoolean()).isFalse();
    assertThat(ipa.at("/spans/2/letters").toString()).isEqualTo("[2,3]");
    assertThat(post(ALIGNMENTS, "{\"spelling\":\"bloab\",\"sounds\":\"B L OW1 B\"}"))
        .isEqualTo(ipa);
    assertThat(post(ALIGNMENTS, "{\"spelling\":\"BLOAB\",\"sounds\":\"b l oU b\"}")).isEqualTo(ipa);
  }

  @Test
  void alignsAWordOfTheBankAndElseGuesses() throws Exception {
    JsonNode known = post(ALIGNMENTS, "{\"spelling\":\"boat\"}");
    assertThat(known.path("sounds").asText()).isEqualTo("b oʊ t");
    assertThat(known.path("guessed").asBoolean()).isFalse();
    JsonNode guessed = post(ALIGNMENTS, "{\"spelling\":\"bloab\"}");
    assertThat(guessed.path("sounds").asText()).isEqualTo("b l oʊ b");
    assertThat(guessed.path("guessed").asBoolean()).isTrue();
  }

  @Test
  void saysWhatStandsInTheWayOfAnAlignment() throws Exception {
    JsonNode answer = post(ALIGNMENTS, "{\"spelling\":\"cat\",\"sounds\":\"d ɔ ɡ\"}");
    assertThat(answer.path("aligned").asBoolean()).isFalse();
    assertThat(answer.path("spans")).isEmpty();
    assertThat(answer.path("obstacle").asText()).isNotBlank();
  }
}
