package org.hedgerow.web.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Exchanges made by hand: the good ones must pass, and each of the bad ones be caught. */
class OpenApiContractTest {
  private static final OpenApiContract CONTRACT = OpenApiContract.published();

  private static final String RULES =
      "doubled,ck,tch-as-ch,s-as-z,n-before-k,x,no-reduced-vowels,no-inflected-forms";

  private static final String WOOL =
      """
      {"spelling": "wool", "status": "seeded", "commonness": 3, "syllables": 1,
       "starter": false, "partsOfSpeech": ["noun"], "meanings": ["artifact"], "pronunciations": [
        {"accent": "en-US", "sounds": "w ʊ l", "arpabet": "W UH1 L", "margin": null, "spans": [
          {"letters": [0], "grapheme": "w", "sound": "w", "class": "basic"},
          {"letters": [1, 2], "grapheme": "oo", "sound": "ʊ", "class": "phonogram", "value": 2,
           "target": true},
          {"letters": [3], "grapheme": "l", "sound": "l", "class": "basic"}]}]}
      """
          .replace("\n", "");

  private static final Traffic LIST =
      Traffic.read(
          "/api/v1/words?phonogram=oo&value=2&taught=sh,oo2&limit=1",
          """
          {"edition": 1, "total": 18, "next": "MTp3b29s",
           "query": {"phonogram": "oo", "value": 2, "accent": ["en-US"], "commonness": 2,
             "status": "any", "picturable": 0, "pictured": false, "meaning": [], "include": [], "rules": "%s", "taught": ["sh", "oo2"],
             "sort": "default", "limit": 1},
           "words": [%s]}
          """
              .formatted(RULES, WOOL));

  private static final Traffic CHECKS =
      Traffic.question(
          "/api/v1/word-checks",
          """
          {"words": ["cat", "Boat"], "phonogram": "oa", "rules": "no-ck", "taught": ["sh"]}
          """,
          """
          {"edition": 1,
           "query": {"phonogram": "oa", "value": 1, "accent": ["en-US"], "rules": "%s",
             "taught": ["sh"]},
           "checks": [
             {"word": "cat", "verdict": "fail", "findings": [
               {"code": "no-target", "accent": "en-US", "letters": [], "message": "no oa"}]},
             {"word": "boat", "verdict": "pass", "findings": [], "guessed": true}]}
          """
              .formatted(RULES.replace("ck", "no-ck")));

  private static final Traffic ALIGNMENT =
      Traffic.question(
          "/api/v1/alignments",
          "{\"spelling\": \"cat\", \"sounds\": \"d ɔ ɡ\"}",
          """
          {"edition": 1, "spelling": "cat", "accent": "en-US", "sounds": "d ɔ ɡ", "guessed": false,
           "aligned": false, "spans": [], "margin": null, "obstacle": "c can't say /d/"}
          """);

  private static final Traffic FAMILY =
      Traffic.read(
          "/api/v1/sounds/o%CA%8A?accent=en-US",
          """
          {"edition": 1, "accent": "en-US", "sound": "oʊ", "spellings": [
            {"grapheme": "oa", "value": 1, "class": "phonogram", "keyWord": "boat",
             "share": 0.07, "words": 63, "examples": ["boat"]},
            {"grapheme": "ew", "class": "irregular", "keyWord": "sew", "share": 0,
             "examples": []}]}
          """);

  private static final Traffic HEALTH =
      Traffic.read("/health/ready", "{\"status\": \"up\", \"writes\": \"down\"}");

  static Stream<Arguments> good() {
    return Stream.of(
        arguments("a list", LIST),
        arguments("a list that found nothing", LIST.replacing(WOOL, "")),
        arguments("a list as CSV", csv(WOOL_ROW)),
        arguments("an empty CSV list", csv("")),
        arguments("a list as lines of JSON", lines(WOOL + "\n" + WOOL + "\n")),
        arguments("no lines of JSON", lines("")),
        arguments("a list as text", text("book\nwool\n")),
        arguments("an empty text", text("")),
        arguments("only the head of a list", LIST.method("HEAD").body("")),
        arguments("not modified", LIST.status(304).header("Content-Type", "").body("")),
        arguments("checks", CHECKS),
        arguments("an alignment that fails", ALIGNMENT),
        arguments("a sound family", FAMILY),
        arguments("a head of health", HEALTH.method("HEAD").body("")),
        arguments("not ready", HEALTH.header("Retry-After", "5").refused(503, "unavailable")),
        arguments("an unknown phonogram", LIST.refused(400, "unknown-phonogram")),
        arguments(
            "an unknown parameter",
            LIST.address("/api/v1/words?phonogramm=oo").refused(400, "unknown-parameter")),
        arguments(
            "an unknown word", LIST.address("/api/v1/words/xyz").refused(404, "unknown-word")),
        arguments("a format there isn't", LIST.refused(406, "unsupported-format")),
        arguments("a large body", CHECKS.refused(413, "body-too-large")),
        arguments("an unlisted path", LIST.address("/api/v1/cats").refused(404, "not-found")),
        arguments(
            "an unlisted method",
            LIST.method("DELETE").header("Allow", "GET, HEAD").refused(405, "method-not-allowed")),
        arguments("a preflight", LIST.method("OPTIONS").status(204)));
  }

  private static final String WOOL_ROW = "wool,seeded,3,1,en-US,w ʊ l,w oo l,oo,2,yes\r\n";

  private static Traffic csv(String rows) {
    String header =
        "spelling,status,commonness,syllables,accent,sounds,graphemes,target"
            + ",picturable,starter\r\n";
    return LIST.header("Content-Type", "text/csv; charset=utf-8").body(header + rows);
  }

  private static Traffic lines(String body) {
    return LIST.header("Content-Type", "application/x-ndjson").body(body);
  }

  private static Traffic text(String body) {
    return LIST.header("Content-Type", "text/plain;charset=UTF-8").body(body);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("good")
  void lets(String what, Traffic traffic) {
    assertThat(CONTRACT.breaches(traffic.exchange())).as(what).isEmpty();
    assertThatCode(() -> CONTRACT.require(traffic.exchange())).doesNotThrowAnyException();
  }

  static Stream<Arguments> badRoutes() {
    return Stream.of(
        arguments(LIST.address("/api/v1/cats"), "path isn't listed, so the answer must be 404"),
        arguments(LIST.address("/api/v1/words/"), "path isn't listed"),
        arguments(LIST.address("/api/v1/words/a/b"), "path isn't listed"),
        arguments(LIST.address("/api/v1/Words"), "path isn't listed"),
        arguments(LIST.method("PUT"), "method isn't listed, so the answer must be 405"),
        arguments(LIST.method("PUT").refused(405, "method-not-allowed"), "header Allow is missing"),
        arguments(
            LIST.address("/api/v1/cats").status(404).header("Content-Type", "text/html"),
            "content type text/html"),
        arguments(LIST.status(201), "status 201 isn't listed"),
        arguments(LIST.status(302), "status 302 isn't listed"),
        arguments(LIST.refused(415, "unsupported-media-type"), "status 415 isn't listed"),
        arguments(LIST.refused(500, "internal-error"), "nothing may be answered 500"));
  }

  static Stream<Arguments> badRequests() {
    return Stream.of(
        arguments(LIST.address("/api/v1/words?colour=red"), "accepted the parameter colour, which"),
        arguments(LIST.address("/api/v1/words?limit=5&limit=5"), "the parameter limit 2 times"),
        arguments(LIST.address("/api/v1/words?limit=5001"), "limit=5001: must have a maximum"),
        arguments(LIST.address("/api/v1/words?limit=0"), "limit=0: must have a minimum"),
        arguments(LIST.address("/api/v1/words?limit=ten"), "limit=ten: string found"),
        arguments(LIST.address("/api/v1/words?limit="), "limit=: string found"),
        arguments(LIST.address("/api/v1/words?phonogram="), "phonogram=: does not match"),
        arguments(LIST.address("/api/v1/words?phonogram=o%00"), "does not match"),
        arguments(LIST.address("/api/v1/words?accent="), "accent=: must have at least 1 item"),
        arguments(LIST.address("/api/v1/words?taught=sh,,ch"), "taught=sh,,ch: /1 does not match"),
        arguments(LIST.address("/api/v1/words?rules=no-loud"), "rules=no-loud: /0 does not match"),
        arguments(LIST.address("/api/v1/words?sort=SPELLING"), "sort=SPELLING: does not have"),
        arguments(
            LIST.address("/api/v1/words?limit=5&limit=5").status(304).body(""),
            "the parameter limit 2 times"),
        arguments(FAMILY.address("/api/v1/sounds/a%20b"), "sound=a b: does not match"),
        arguments(
            LIST.refused(400, "unknown-parameter"), "calls a parameter unknown, but all that were"),
        arguments(sent("{\"words\": []}"), "accepted a body that /words must have at least 1"),
        arguments(sent("{\"words\": [\"don't\"]}"), "a body that /words/0 does not match"),
        arguments(sent("{\"words\": [\"cat\"], \"value\": 2}"), "a body that has a missing prop"),
        arguments(sent("{\"words\": [\"cat\"], \"word\": 2}"), "property 'word' is not defined"),
        arguments(sent("null"), "a body that null found, object expected"),
        arguments(sent("{"), "a body that is no JSON"),
        arguments(sent(""), "a body that is empty"),
        arguments(
            Traffic.read("/api/v1/word-checks", CHECKS.exchange().body()).method("POST"),
            "a body that has no Content-Type"));
  }

  private static Traffic sent(String requestBody) {
    return Traffic.question("/api/v1/word-checks", requestBody, CHECKS.exchange().body());
  }

  static Stream<Arguments> badAnswers() {
    return Stream.of(
        arguments(LIST.header("ETag", ""), "the header ETag is missing"),
        arguments(LIST.header("ETag", "1-abc"), "the header ETag: 1-abc does not match"),
        arguments(LIST.header("ETag", "W/\"1\""), "the header ETag: W/\"1\" does not match"),
        arguments(LIST.header("Cache-Control", "max-age=60"), "the header Cache-Control"),
        arguments(LIST.header("Access-Control-Allow-Origin", "null"), "Allow-Origin: null must be"),
        arguments(LIST.header("Content-Type", ""), "the answer has no Content-Type"),
        arguments(LIST.header("Content-Type", "text/html"), "has the content type text/html"),
        arguments(LIST.method("HEAD"), "the answer has a body and mustn't"),
        arguments(
            LIST.method("HEAD").body("").header("Content-Type", "text/html"), "type text/html"),
        arguments(LIST.status(304), "the answer has a body and mustn't"),
        arguments(LIST.body(""), "the answer is empty"),
        arguments(LIST.body("{}"), "required property 'edition' not found"),
        arguments(LIST.body("[]"), "array found, object expected"),
        arguments(LIST.body("oops"), "the answer is no JSON"),
        arguments(LIST.body(LIST.exchange().body() + "{}"), "the answer is no JSON"),
        arguments(LIST.replacing("\"total\": 18", "\"total\": 18, \"total\": 18"), "is no JSON"),
        arguments(LIST.replacing("\"total\": 18", "\"total\": \"18\""), "/total string found"),
        arguments(LIST.replacing("\"MTp3b29s\"", "null"), "/next null found"),
        arguments(LIST.replacing("\"total\"", "\"sum\""), "property 'sum' is not defined"),
        arguments(LIST.replacing("\"include\": [], ", ""), "/query required property 'include'"),
        arguments(LIST.replacing("\"value\": 2, \"accent\"", "\"accent\""), "/query has a missing"),
        arguments(LIST.replacing("no-reduced-vowels,", ""), "/query/rules does not match"),
        arguments(LIST.replacing("seeded", "new"), "/words/0/status does not have a value"),
        arguments(LIST.replacing("\"spelling\": \"wool\"", "\"spelling\": \"Wool\""), "/spelling"),
        arguments(LIST.replacing("\"target\": true", "\"target\": false"), "/spans/1/target"),
        arguments(LIST.replacing("[1, 2]", "[1, 1]"), "/spans/1/letters must have only unique"),
        arguments(
            LIST.replacing("\"phonogram\", \"value\": 2", "\"phonogram\""), "property 'value'"),
        arguments(LIST.replacing("\"margin\": null, ", ""), "required property 'margin'"),
        arguments(LIST.replacing("\"class\": \"basic\"", "\"class\": \"vowel\""), "/class"),
        arguments(LIST.replacing(WOOL, "null"), "/words/0 null found"),
        arguments(csv("").replacing("target", "mark"), "does not match the regex"),
        arguments(lines(WOOL), "the answer its last line has no end"),
        arguments(lines(WOOL + "\n\n"), "the answer line 2: is empty"),
        arguments(lines(WOOL + "\n{}\n"), "the answer line 2: required property 'spelling'"),
        arguments(text("wool"), "does not match the regex"),
        arguments(text("wool\nWool\n"), "does not match the regex"),
        arguments(HEALTH.replacing("up", "live"), "/status must be the constant value 'up'"),
        arguments(CHECKS.replacing("no-target", "no-luck"), "/findings/0/code does not have a"),
        arguments(CHECKS.replacing("\"guessed\": true", "\"guessed\": false"), "/1/guessed must"),
        arguments(CHECKS.replacing("\"pass\"", "\"fail\""), "/checks/1/findings must have at"),
        arguments(ALIGNMENT.replacing("\"aligned\": false", "\"aligned\": true"), "/obstacle"),
        arguments(ALIGNMENT.replacing("\"obstacle\"", "\"hurdle\""), "'obstacle' not found"),
        arguments(FAMILY.replacing("0.07", "7"), "/spellings/0/share must have a maximum"));
  }

  static Stream<Arguments> badProblems() {
    Traffic unknown = LIST.refused(400, "unknown-phonogram");
    return Stream.of(
        arguments(unknown.header("Content-Type", "application/json"), "type application/json"),
        arguments(unknown.replacing("unknown-phonogram", "unknown-animal"), "/type does not have"),
        arguments(unknown.replacing("/docs/problems#", "/problems/"), "/type does not have"),
        arguments(unknown.replacing("400", "404"), "names another status than the answer"),
        arguments(
            unknown.replacing("\"detail\": \"Do this.\",", ""), "property 'detail' not found"),
        arguments(unknown.replacing("\"detail\": \"Do that.\"", "\"message\": \"?\""), "'message'"),
        arguments(unknown.replacing("\"title\"", "\"trace\": \"at org\", \"title\""), "'trace'"),
        arguments(LIST.refused(400, "unknown-word"), "unknown-word isn't listed"),
        arguments(LIST.refused(404, "not-found"), "not-found isn't listed"));
  }

  @ParameterizedTest
  @MethodSource({"badRoutes", "badRequests", "badAnswers", "badProblems"})
  void catches(Traffic traffic, String breach) {
    assertThat(CONTRACT.breaches(traffic.exchange())).anyMatch(each -> each.contains(breach));
  }

  @Test
  void saysWhichExchangeBreaksWhat() {
    Traffic traffic = LIST.address("/api/v1/words?colour=red").header("ETag", "");
    assertThatThrownBy(() -> CONTRACT.require(traffic.exchange()))
        .isInstanceOf(AssertionError.class)
        .hasMessage(
            "GET http://localhost:8080/api/v1/words?colour=red, answered 200, against the OpenAPI"
                + " document:\n  the header ETag is missing\n  the server accepted the parameter"
                + " colour, which isn't listed");
  }
}
