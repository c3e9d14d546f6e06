package org.hedgerow.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.hedgerow.web.testing.ReviewServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes wrong with contributions, over HTTP, and that nothing is kept of it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ContributionMistakesTest {
  private static final String ALL = "/api/v1/contributions";
  private static final String JSON = "Content-Type";

  /** Invented, so that the bank can't hold it. */
  private static final String SPLOAM =
      """
      {"proposal": {"kind": "word", "spelling": "sploam",
        "pronunciations": [{"accent": "en-US", "sounds": "S P L OW M"}],
        "labels": {"picturable": 2}},
       "wantedFor": "oa 1", "note": "The sound of mud.", "submit": %s}
      """;

  private ReviewServer server = ReviewServer.start();

  @AfterAll
  void stop() {
    server.close();
  }

  private int submitted() throws Exception {
    return server.made(server.send("mei", "POST", ALL, SPLOAM.formatted("true")));
  }

  private HttpResponse<String> decide(String name, int id, String revision, String body)
      throws Exception {
    return server.send(
        name, "POST", "%s/%d/decisions".formatted(ALL, id), body, "If-Match", revision);
  }

  /** What was read can be sent back as it is, and then nothing has changed. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"kind\": \"word\", \"spelling\": \"sploam\", \"labels\": {\"notForChildren\": \"\"}}",
        "{\"kind\": \"word\"}",
        "{\"kind\": \"pronunciation\", \"spelling\": \"boat\"}",
        "{\"kind\": \"alignment\", \"saying\": {\"accent\": \"en-US\", \"spans\": [{\"letters\": [0], \"sound\": \"\"}]}}",
        "{\"kind\": \"tags\", \"labels\": {\"commonness\": 9, \"partsOfSpeech\": [\"noun\"]}}",
        "{\"kind\": \"picture\", \"title\": \"ملعقة <b>\"}",
        "{\"kind\": \"sentence\", \"text\": \"The goat can float.\"}",
        "{\"kind\": \"withdrawal\"}"
      })
  void whatWasReadCanBeSentBack(String proposal) throws Exception {
    HttpResponse<String> added =
        server.send("mei", "POST", ALL, "{\"proposal\": %s}".formatted(proposal));
    int id = server.made(added);
    String content = "{\"proposal\": %s}".formatted(server.json(added).path("proposal"));
    HttpResponse<String> same =
        server.send("mei", "PUT", ALL + "/" + id, content, "If-Match", "\"1\"");
    assertThat(same.statusCode()).as(same.body()).isEqualTo(200);
    assertThat(same.headers().firstValue("ETag")).hasValue("\"1\"");
    assertThat(server.json(same).path("faults").isEmpty()).isEqualTo(false);
  }

  @Test
  void needsToKnowWhichRevisionIsMeant() throws Exception {
    int id = submitted();
    String submission = ALL + "/" + id + "/submission";
    HttpResponse<String> none = server.send("mei", "DELETE", submission, "");
    assertThat(none.statusCode()).isEqualTo(428);
    assertThat(none.body()).contains("If-Match");
    for (String wrong : new String[] {"*", "1", "\"1\" \"2\"", "\"1"}) {
      HttpResponse<String> answer = server.send("mei", "DELETE", submission, "", "If-Match", wrong);
      assertThat(answer.statusCode()).as(wrong).isEqualTo(400);
    }
    for (String other : new String[] {"W/\"1\"", "\"x\"", "\"0\"", "\"2\"", "\"1\", \"2\""}) {
      HttpResponse<String> answer = server.send("mei", "DELETE", submission, "", "If-Match", other);
      assertThat(answer.statusCode()).as(other).isEqualTo(412);
    }
    assertThat(
            server
                .send("mei", "DELETE", submission, "", "If-Match", "W/\"9\", \"1\" , \"x\"")
                .statusCode())
        .isEqualTo(200);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{} | proposal",
        "null | null",
        "[] | one JSON object",
        "{\"proposal\": null} | proposal is null",
        "{\"proposal\": {}} | proposal.kind must be one of word, pronunciation",
        "{\"proposal\": {\"kind\": \"wrod\"}} | proposal.kind must be one of word",
        "{\"proposal\": {\"kind\": 7}} | proposal.kind must be one of",
        "{\"proposal\": \"word\"} | proposal",
        "{\"proposal\": {\"kind\": \"word\", \"speling\": \"x\"}} | proposal.speling",
        "{\"proposal\": {\"kind\": \"word\", \"spelling\": 7}} | proposal.spelling must be text",
        "{\"proposal\": {\"kind\": \"word\", \"labels\": {\"picturable\": \"2\"}}} | proposal.labels.picturable must be a number",
        "{\"proposal\": {\"kind\": \"word\", \"pronunciations\": {}}} | proposal.pronunciations must be a list",
        "{\"proposal\": {\"kind\": \"word\", \"spelling\": \"a\\u0000b\"}} | proposal.spelling has a character",
        "{\"proposal\": {\"kind\": \"word\", \"spelling\": \"\\ud800\"}} | proposal.spelling has a character",
        "{\"proposal\": {\"kind\": \"sentence\", \"value\": 1.5}} | proposal.value must be a number",
        "{\"proposal\": {\"kind\": \"word\"}, \"wantedFor\": \"qq 7\"} | Write the phonogram and the number",
        "{\"proposal\": {\"kind\": \"word\"}, \"submit\": \"yes\"} | submit must be true or false",
        "{\"proposal\": {\"kind\": \"word\", \"kind\": \"tags\"}} | twice"
      })
  void saysWhatIsWrongWithABody(String body, String expected) throws Exception {
    HttpResponse<String> answer = server.send("mei", "POST", ALL, body);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(400);
    assertThat(answer.body()).contains(expected).doesNotContain("org.hedgerow", "Exception");
  }

  @Test
  void noteAndBodyHaveAnEnd() throws Exception {
    String long10000 =
        "{\"proposal\": {\"kind\": \"word\"}, \"note\": \"%s\"}".formatted("x".repeat(10_000));
    HttpResponse<String> note = server.send("mei", "POST", ALL, long10000);
    assertThat(note.statusCode()).isEqualTo(400);
    assertThat(note.body()).contains("note has 10000 characters; at most 2000 are kept");
    HttpResponse<String> body =
        server.send(
            "mei", "POST", ALL, long10000.replace("note", "wantedFor").replace("xx", "x x  x "));
    assertThat(body.statusCode()).isEqualTo(400);
    String huge =
        "{\"proposal\": {\"kind\": \"word\", \"spelling\": \"%s\"}}".formatted("x".repeat(200_000));
    assertThat(server.send("mei", "POST", ALL, huge).statusCode()).isEqualTo(413);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"spelling\": \"Sploam\" | proposal.spelling",
        "\"spelling\": \"boat\" | proposal.spelling",
        "\"spelling\": \"\" | proposal.spelling",
        "\"spelling\": \"sploam\", \"pronunciations\": [] | proposal.pronunciations",
        "\"spelling\": \"sploam\", \"pronunciations\": [{\"accent\": \"en-ZZ\", \"sounds\": \"S\"}] | proposal.pronunciations[0].accent",
        "\"spelling\": \"sploam\", \"pronunciations\": [{\"accent\": \"en-US\", \"sounds\": \"zz\"}] | proposal.pronunciations[0].sounds",
        "\"spelling\": \"oak\", \"pronunciations\": [{\"accent\": \"en-US\", \"sounds\": \"OW K\", \"spans\": [{\"letters\": [0, 9], \"sound\": \"OW\"}]}] | proposal.pronunciations[0].spans",
        "\"spelling\": \"oak\", \"pronunciations\": [{\"accent\": \"en-US\", \"sounds\": \"OW K\", \"spans\": [{\"letters\": [-1], \"sound\": \"OW\"}]}] | proposal.pronunciations[0].spans",
        "\"labels\": {\"picturable\": 4} | proposal.labels.picturable",
        "\"labels\": {\"partsOfSpeech\": [\"nown\"]} | proposal.labels.partsOfSpeech"
      })
  void saysWhatIsWrongWithAProposal(String members, String place) throws Exception {
    String body = "{\"proposal\": {\"kind\": \"word\", %s}, \"submit\": true}".formatted(members);
    HttpResponse<String> answer = server.send("mei", "POST", ALL, body);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(400);
    assertThat(server.json(answer).path("type").asText()).endsWith("#unfit-contribution");
    assertThat(server.json(answer).path("errors"))
        .extracting(each -> each.path("parameter").asText())
        .contains(place);
    assertThat(server.get("mei", ALL + "?state=submitted&kind=word&about=boat").body())
        .as("nothing kept")
        .contains("\"contributions\":[]");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{} | approve, return, decline",
        "{\"decision\": \"aprove\"} | approve, return, decline",
        "{\"decision\": \"return\"} | Say why",
        "{\"decision\": \"overrule\", \"comment\": \"So.\"} | Say which finding",
        "{\"decision\": \"overrule\", \"comment\": \"So.\", \"finding\": \"small-margin\"} | no such finding",
        "{\"decision\": \"approve\", \"finding\": \"name\"} | Leave it out",
        "{\"decision\": \"approve\", \"vote\": 1} | vote"
      })
  void saysWhatIsWrongWithADecision(String body, String expected) throws Exception {
    HttpResponse<String> answer = decide("rosa", submitted(), "\"1\"", body);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(400);
    assertThat(answer.body()).contains(expected);
  }

  @ParameterizedTest
  @ValueSource(strings = {"abc", "0", "-1", "99999999999", "1.5", "%20", "4711"})
  void whatIsNoContributionIsNotFound(String id) throws Exception {
    assertThat(server.get("mei", ALL + "/" + id).statusCode()).isEqualTo(404);
    assertThat(
            server
                .send(
                    "rosa",
                    "POST",
                    ALL + "/" + id + "/decisions",
                    "{\"decision\": \"approve\"}",
                    "If-Match",
                    "\"1\"")
                .statusCode())
        .isEqualTo(404);
  }

  @ParameterizedTest
  @CsvSource({
    "state=aproved, draft",
    "'state=draft,', draft",
    "kind=words, word",
    "author=mei, whole number",
    "serves=oa-x, oa-1",
    "limit=0, limit",
    "limit=201, 200",
    "after=x, next",
    "stat=draft, state",
    "limit=1&limit=2, once",
    "about=%00, about"
  })
  void saysWhatIsWrongWithAQuestion(String query, String expected) throws Exception {
    HttpResponse<String> answer = server.get("mei", ALL + "?" + query);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(400);
    assertThat(server.json(answer).path("detail").asText()).contains(expected);
  }

  @Test
  void saysWhichOfManyDecisionsIsWrong() throws Exception {
    String body =
        "{\"decisions\": [{\"contribution\": 1, \"revision\": 1, \"decision\": \"approve\"}, {\"decision\": \"x\"}]}";
    HttpResponse<String> answer = server.send("rosa", "POST", "/api/v1/decisions", body);
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body())
        .contains("decisions[1].contribution", "decisions[1].revision", "decisions[1].decision");
    assertThat(server.send("rosa", "POST", "/api/v1/decisions", "{}").statusCode()).isEqualTo(400);
  }

  @Test
  void sendsNoOtherFormats() throws Exception {
    assertThat(server.get("mei", ALL, "Accept", "text/csv").statusCode()).isEqualTo(406);
    assertThat(server.send("mei", "POST", ALL, "x", JSON, "text/plain").statusCode())
        .isEqualTo(415);
    assertThat(server.send("mei", "PATCH", ALL, "{}").statusCode()).isEqualTo(405);
  }
}
