package org.hedgerow.web.curriculum;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import org.hedgerow.web.testing.ApiServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Named rules, sequences and needs, as programs get them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlanningTest {

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

  @Test
  void namedRulesSayWhatEverySwitchMeans() throws Exception {
    JsonNode rules = server.json(API + "/rules").path("rules");
    assertThat(rules.findValuesAsText("title")).hasSizeGreaterThanOrEqualTo(3);
    assertThat(rules.at("/0/name").asText()).isEqualTo("usual");
    for (JsonNode set : rules) {
      assertThat(set.path("switches")).hasSize(8);
      assertThat(set.path("switches").findValuesAsText("meaning")).doesNotContain("");
    }
  }

  /** As the list has it, at an address of its own, for good where an edition is named. */
  @ParameterizedTest
  @CsvSource({
    "/rules, rules, strict",
    "/sequences, sequences, ours",
    "/sight-words, sightWords, dolch"
  })
  void oneSetIsReadByItsName(String path, String list, String name) throws Exception {
    JsonNode one = server.json(API + path + "/" + name);
    assertThat(one.path("edition").asInt()).isEqualTo(1);
    for (JsonNode each : server.json(API + path).path(list)) {
      if (each.path("name").asText().equals(name)) {
        each.properties()
            .forEach(field -> assertThat(one.path(field.getKey())).isEqualTo(field.getValue()));
      }
    }
    HttpResponse<String> pinned = server.get(API + path + "/" + name + "?edition=1");
    assertThat(pinned.headers().firstValue("Cache-Control"))
        .hasValue("public, max-age=31536000, immutable");
    HttpResponse<String> missing = server.get(API + path + "/nowhere");
    assertThat(missing.statusCode()).isEqualTo(404);
    assertThat(missing.body()).contains("#not-found", name);
  }

  @Test
  void sightWordsSayFirstWhatCountsWhereNothingIsChosen() throws Exception {
    JsonNode sets = server.json(API + "/sight-words").path("sightWords");
    assertThat(sets.at("/0/name").asText()).isEqualTo("dolch");
    assertThat(sets.at("/0/words")).hasSize(220);
    assertThat(sets.at("/1/words")).hasSize(40);
  }

  /** By the strict rules bell and duck can't be read, and a switch after the name changes them. */
  @Test
  void aNamedSetStandsWhereSwitchesDo() throws Exception {
    assertThat(verdicts("usual")).containsExactly("pass", "pass", "pass");
    assertThat(verdicts("strict")).containsExactly("fail", "fail", "pass");
    assertThat(verdicts("strict,ck")).containsExactly("fail", "pass", "pass");
    assertThat(verdicts("first")).containsExactly("fail", "fail", "fail");
  }

  private List<String> verdicts(String rules) throws Exception {
    String body = "{\"words\":[\"bell\",\"duck\",\"box\"],\"rules\":\"%s\"}".formatted(rules);
    JsonNode checks = server.json(server.post(API + "/word-checks", body)).path("checks");
    return checks.findValuesAsText("verdict");
  }

  @Test
  void everySequenceTellsFiguresThatItsStepsKeep() throws Exception {
    JsonNode sequences = server.json(API + "/sequences").path("sequences");
    assertThat(names(sequences)).contains("ours").hasSizeGreaterThanOrEqualTo(3);
    for (JsonNode sequence : sequences) {
      JsonNode step = sequence.path("steps").path(4);
      for (JsonNode value : step.path("values")) {
        String address =
            "%s/words?phonogram=%s&value=%s&taught=%s&limit=1"
                .formatted(
                    API,
                    value.path("phonogram").asText(),
                    value.path("value").asText(),
                    step.path("taught").asText());
        assertThat(server.json(address).path("total")).isEqualTo(value.path("words"));
      }
    }
  }

  private static List<String> names(JsonNode sequences) {
    List<String> names = new ArrayList<>();
    sequences.forEach(each -> names.add(each.path("name").asText()));
    return names;
  }

  /** What comes first is common and reliable; what most centres teach early comes early. */
  @Test
  void oursBeginsWithWhatOpensManyWords() throws Exception {
    JsonNode sequences = server.json(API + "/sequences").path("sequences");
    JsonNode steps = sequences.path(sequences.size() - 1).path("steps");
    List<String> early = new ArrayList<>();
    for (int i = 0; i < 25; i++) {
      early.add(steps.path(i).at("/values/0/phonogram").asText());
    }
    assertThat(early).contains("sh", "a-e", "ee", "ai");
    assertThat(steps.at("/0/opens").asInt()).isGreaterThan(50);
    double first = steps.at("/0/opens").asInt() * steps.at("/0/values/0/regularity").asDouble();
    double tenth = steps.at("/9/opens").asInt() * steps.at("/9/values/0/regularity").asDouble();
    assertThat(first).isGreaterThan(tenth);
  }

  @Test
  void aStepCanStandBesideValuesAndIsRepeatedAsItWasGiven() throws Exception {
    JsonNode alone = server.json(API + "/words?phonogram=oa&taught=pairs:2");
    JsonNode more = server.json(API + "/words?phonogram=oa&taught=pairs:2,ee");
    JsonNode plain = server.json(API + "/words?phonogram=oa&taught=sh,ch,tch");
    assertThat(alone.path("total")).isEqualTo(plain.path("total"));
    assertThat(more.path("total").asInt()).isGreaterThanOrEqualTo(alone.path("total").asInt());
    assertThat(more.at("/query/taught").toString()).isEqualTo("[\"pairs:2\",\"ee\"]");
  }

  @Test
  void checksTakeStepsToo() throws Exception {
    String body = "{\"words\":[\"coach\"],\"phonogram\":\"oa\",\"taught\":[\"single:3\"]}";
    JsonNode answer = server.json(server.post(API + "/word-checks", body));
    assertThat(answer.at("/checks/0/verdict").asText()).isEqualTo("pass");
    assertThat(answer.at("/query/taught/0").asText()).isEqualTo("single:3");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/words?phonogram=oa&taught=mine:3      | unknown-sequence  | pairs, single, sounds, ours",
        "/words?phonogram=oa&taught=pairs:0     | unknown-sequence  | 1 to 33",
        "/words?phonogram=oa&taught=pairs:999   | unknown-sequence  | 1 to 33",
        "/words?phonogram=oa&taught=pairs:99999 | unknown-sequence  | 1 to 33",
        "/words?phonogram=oa&taught=pairs:      | unknown-sequence  | 1 to 33",
        "/words?phonogram=oa&taught=:3          | unknown-sequence  | pairs",
        "/words?phonogram=oa&rules=strikt       | unknown-rule      | strict",
        "/words?phonogram=oa&rules=ck,strict    | invalid-parameter | first",
        "/sequences?accent=xx                   | unknown-accent    | en-US",
        "/needs?accent=en-US,qq                 | unknown-accent    | en-US",
        "/needs?phonogram=oa                    | unknown-parameter | accent",
        "/sight-words?accent=en-US              | unknown-parameter | There are",
        "/rules?accent=en-US                    | unknown-parameter | There are"
      })
  void badInputIsToldInWords(String address, String type, String words) throws Exception {
    HttpResponse<String> response = server.get(API + address);
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(response.body()).contains("#" + type, words);
  }

  @Test
  void needsCountWhatTheListsHold() throws Exception {
    JsonNode answer = server.json(API + "/needs");
    JsonNode first = answer.at("/needs/0");
    String list =
        "%s/words?phonogram=%s&value=%s&limit=1"
            .formatted(API, first.path("phonogram").asText(), first.path("value").asText());
    assertThat(first.at("/words/total")).isEqualTo(server.json(list).path("total"));
    assertThat(answer.at("/enough/pictures").asInt()).isEqualTo(8);
    for (JsonNode need : answer.path("needs")) {
      int trusted = need.at("/words/approved").asInt() + need.at("/words/starter").asInt();
      assertThat(need.at("/lacking/words").asInt()).isEqualTo(Math.max(0, 12 - trusted));
      assertThat(need.at("/words/other").asInt() + trusted)
          .isEqualTo(need.at("/words/total").asInt());
    }
  }

  @Test
  void needsComeInEveryFormatAndForEveryAccent() throws Exception {
    String address = API + "/needs?accent=en-US,en-GB&format=";
    assertThat(server.get(address + "csv").body()).startsWith("phonogram,value,accent,");
    assertThat(server.get(address + "text").body()).contains("oa 1 (boat), en-GB: lacks");
    assertThat(server.get(address + "ndjson").body().lines())
        .allMatch(each -> each.startsWith("{"));
    assertThat(server.get(API + "/needs").headers().firstValue("ETag")).isPresent();
  }
}
