package org.hedgerow.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import org.hedgerow.web.testing.ReviewServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What people propose and what reviewers decide, over HTTP. The words are invented. */
class ContributionsTest {
  private static final String ALL = "/api/v1/contributions";

  /** Invented, so that the bank can't hold it. */
  private static final String SPLOAM =
      """
      {"proposal": {"kind": "word", "spelling": "sploam",
        "pronunciations": [{"accent": "en-US", "sounds": "S P L OW M"}],
        "labels": {"picturable": 2}},
       "wantedFor": "oa 1", "note": "The sound of mud.", "submit": %s}
      """;

  private ReviewServer server = ReviewServer.start();

  @AfterEach
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

  @Test
  void goesFromADraftIntoTheBankAndOutAgain() throws Exception {
    HttpResponse<String> added = server.send("mei", "POST", ALL, SPLOAM.formatted("false"));
    int id = server.made(added);
    assertThat(added.headers().firstValue("Location")).hasValue(ALL + "/" + id);
    assertThat(added.headers().firstValue("ETag")).hasValue("\"1\"");
    assertThat(server.json(added).path("state").asText()).isEqualTo("draft");
    String one = ALL + "/" + id;
    assertThat(server.get("omar", one).statusCode()).as("another's draft").isEqualTo(404);

    String changed = SPLOAM.replace(", \"submit\": %s", "").replace("mud", "wet mud");
    HttpResponse<String> revised = server.send("mei", "PUT", one, changed, "If-Match", "\"1\"");
    assertThat(revised.headers().firstValue("ETag")).hasValue("\"2\"");

    HttpResponse<String> sent =
        server.send("mei", "POST", one + "/submission", "", "If-Match", "\"2\"");
    assertThat(server.json(sent).path("serves").toString()).isEqualTo("[\"oa 1\"]");

    JsonNode approved = server.json(decide("rosa", id, "\"2\"", "{\"decision\": \"approve\"}"));
    assertThat(approved.path("state").asText()).isEqualTo("approved");
    assertThat(approved.path("edition").asInt()).isEqualTo(2);
    assertThat(approved.path("decisions").path(0).path("by").path("name").asText())
        .isEqualTo("rosa");
    assertThat(server.get("nobody", "/api/v1/words/sploam").statusCode()).isEqualTo(200);

    JsonNode withdrawn =
        server.json(
            decide(
                "tomasz", id, "\"2\"", "{\"decision\": \"withdraw\", \"comment\": \"No word.\"}"));
    assertThat(withdrawn.path("state").asText()).isEqualTo("withdrawn");
    assertThat(withdrawn.path("decisions").path(1).path("edition").asInt()).isEqualTo(3);
    assertThat(server.get("nobody", "/api/v1/words/sploam").statusCode()).isEqualTo(404);
  }

  @Test
  void isReturnedTakenBackAndDiscarded() throws Exception {
    int id = submitted();
    String one = ALL + "/" + id;
    JsonNode returned =
        server.json(
            decide("rosa", id, "\"1\"", "{\"decision\": \"return\", \"comment\": \"Which mud?\"}"));
    assertThat(returned.path("state").asText()).isEqualTo("returned");
    server.send("mei", "POST", one + "/submission", "", "If-Match", "\"1\"");
    HttpResponse<String> back =
        server.send("mei", "DELETE", one + "/submission", "", "If-Match", "\"1\"");
    assertThat(server.json(back).path("state").asText()).isEqualTo("draft");
    assertThat(server.send("mei", "DELETE", one, "", "If-Match", "\"1\"").statusCode())
        .as("reviewers have decided on it")
        .isEqualTo(409);
    String another = SPLOAM.formatted("false").replace("mud", "silt");
    int other = server.made(server.send("mei", "POST", ALL, another));
    String draft = ALL + "/" + other;
    assertThat(server.send("mei", "DELETE", draft, "", "If-Match", "\"1\"").statusCode())
        .isEqualTo(204);
    assertThat(server.get("mei", draft).statusCode()).isEqualTo(404);
  }

  @Test
  void showsWhoWasFaster() throws Exception {
    int id = submitted();
    decide("rosa", id, "\"1\"", "{\"decision\": \"decline\", \"comment\": \"No word.\"}");
    HttpResponse<String> late = decide("tomasz", id, "\"1\"", "{\"decision\": \"approve\"}");
    assertThat(late.statusCode()).isEqualTo(409);
    JsonNode problem = server.json(late);
    assertThat(problem.path("type").asText()).isEqualTo("/docs/problems#conflict");
    assertThat(problem.path("present").path("state").asText()).isEqualTo("declined");
    assertThat(problem.path("decided").path("by").path("name").asText()).isEqualTo("rosa");
    assertThat(problem.path("decided").path("comment").asText()).isEqualTo("No word.");
  }

  @Test
  void showsWhatHasChangedMeanwhile() throws Exception {
    int id = server.made(server.send("mei", "POST", ALL, SPLOAM.formatted("false")));
    String content = SPLOAM.replace(", \"submit\": %s", "");
    String one = ALL + "/" + id;
    server.send("mei", "PUT", one, content.replace("OW", "AA"), "If-Match", "\"1\"");
    HttpResponse<String> stale =
        server.send("mei", "PUT", one, content.replace("mud", "silt"), "If-Match", "\"1\"");
    assertThat(stale.statusCode()).isEqualTo(412);
    JsonNode problem = server.json(stale);
    assertThat(problem.path("present").path("revision").asInt()).isEqualTo(2);
    assertThat(problem.path("changed"))
        .extracting(each -> each.path("field").asText())
        .containsExactly("revision", "proposal.pronunciations[0].sounds", "note");
    assertThat(problem.path("changed").path(1).path("yours").asText()).isEqualTo("S P L OW M");
    assertThat(problem.path("changed").path(1).path("present").asText()).isEqualTo("S P L AA M");
  }

  @Test
  void nobodyDecidesOnTheirOwnNorChangesAnothers() throws Exception {
    int own = server.made(server.send("rosa", "POST", ALL, SPLOAM.formatted("true")));
    HttpResponse<String> answer = decide("rosa", own, "\"1\"", "{\"decision\": \"approve\"}");
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.body()).contains("#not-yours", "Nobody decides on their own");
    HttpResponse<String> another =
        server.send("omar", "DELETE", ALL + "/" + own + "/submission", "", "If-Match", "\"1\"");
    assertThat(another.statusCode()).isEqualTo(403);
    assertThat(another.body()).contains("Only rosa can do that");
  }

  @Test
  void contributorsDontDecideAndVisitorsDontContribute() throws Exception {
    int id = submitted();
    assertThat(decide("omar", id, "\"1\"", "{\"decision\": \"approve\"}").statusCode())
        .isEqualTo(403);
    assertThat(server.send("nobody", "POST", ALL, SPLOAM.formatted("true")).statusCode())
        .isEqualTo(401);
    assertThat(server.get("mei", "/api/v1/review-queue").statusCode()).isEqualTo(403);
  }

  @Test
  void commentsHaveAnEndAndAnyScript() throws Exception {
    int id = submitted();
    String decision = "{\"decision\": \"decline\", \"comment\": \"%s\"}";
    assertThat(decide("rosa", id, "\"1\"", decision.formatted("x".repeat(2001))).statusCode())
        .isEqualTo(400);
    String comment = "ليست كلمة 🐸";
    JsonNode declined = server.json(decide("rosa", id, "\"1\"", decision.formatted(comment)));
    assertThat(declined.path("decisions").path(0).path("comment").asText()).isEqualTo(comment);
  }

  @Test
  void listsAndPages() throws Exception {
    for (int i = 0; i < 5; i++) {
      String body = SPLOAM.replace("sploam", "sploam" + "b".repeat(i)).formatted(i < 4);
      server.made(server.send(i % 2 == 0 ? "mei" : "omar", "POST", ALL, body));
    }
    assertThat(ids(ALL)).containsExactly(5, 4, 3, 2, 1);
    assertThat(ids(ALL + "?author=me&state=submitted&kind=word&serves=oa-1")).containsExactly(3, 1);
    assertThat(ids(ALL + "?about=sploamb")).containsExactly(2);
    assertThat(ids(ALL + "?state=approved,returned")).isEmpty();
    HttpResponse<String> first = server.get("mei", ALL + "?limit=2");
    String next = server.json(first).path("next").asText();
    assertThat(ids(ALL + "?limit=2&after=" + next)).containsExactly(3, 2);
    HttpResponse<String> last = server.get("omar", ALL + "?limit=4");
    assertThat(server.json(last).path("next").isMissingNode()).as("the draft isn't his").isTrue();
  }

  private List<Integer> ids(String path) throws Exception {
    List<Integer> ids = new ArrayList<>();
    server
        .json(server.get("mei", path))
        .path("contributions")
        .forEach(each -> ids.add(each.path("id").asInt()));
    return ids;
  }

  @Test
  void decidesOnManyEachByItself() throws Exception {
    int one = submitted();
    int own =
        server.made(
            server.send("rosa", "POST", ALL, SPLOAM.replace("sploam", "ploam").formatted("true")));
    String body =
        """
        {"decisions": [
          {"contribution": %d, "revision": 1, "decision": "approve"},
          {"contribution": %d, "revision": 1, "decision": "approve"},
          {"contribution": 4711, "revision": 1, "decision": "approve"},
          {"contribution": %d, "revision": 1, "decision": "approve"},
          {"contribution": %d, "revision": 9, "decision": "withdraw", "comment": "No."}]}
        """
            .formatted(one, own, one, one);
    JsonNode results = server.json(server.send("rosa", "POST", "/api/v1/decisions", body));
    assertThat(results.path("results"))
        .extracting(each -> each.path("problem").path("status").asInt())
        .containsExactly(0, 403, 404, 409, 412);
    assertThat(results.at("/results/0/decided/edition").asInt()).isEqualTo(2);
    assertThat(results.at("/results/3/problem/decided/by/name").asText()).isEqualTo("rosa");
  }

  @Test
  void queuesByNeed() throws Exception {
    submitted();
    server.made(
        server.send("rosa", "POST", ALL, SPLOAM.replace("sploam", "ploam").formatted("true")));
    server.made(
        server.send(
            "omar",
            "POST",
            ALL,
            "{\"proposal\": {\"kind\": \"withdrawal\", \"spelling\": \"boat\", \"reason\": \"Try.\"}, \"submit\": true}"));
    JsonNode queue = server.json(server.get("rosa", "/api/v1/review-queue?limit=2"));
    assertThat(queue.path("total").asInt()).isEqualTo(3);
    assertThat(queue.at("/waiting/0/need").asText()).isEqualTo("oa 1");
    assertThat(queue.at("/waiting/0/own").isMissingNode()).isTrue();
    assertThat(queue.at("/waiting/1/own").asBoolean()).isTrue();
    JsonNode rest =
        server.json(
            server.get("rosa", "/api/v1/review-queue?after=" + queue.path("next").asText()));
    assertThat(rest.at("/waiting/0/contribution/summary").asText()).contains("boat");
    assertThat(rest.at("/waiting/0/need").isMissingNode()).isTrue();
    assertThat(server.get("rosa", "/api/v1/review-queue?after=x").statusCode()).isEqualTo(400);
    assertThat(server.get("rosa", "/api/v1/review-queue?state=draft").statusCode()).isEqualTo(400);
  }

  @Test
  void judgesWithoutKeeping() throws Exception {
    String check = SPLOAM.replace(", \"submit\": %s", "");
    JsonNode ready = server.json(server.send("mei", "POST", "/api/v1/contribution-checks", check));
    assertThat(ready.path("faults").isEmpty()).isTrue();
    assertThat(ready.path("serves").toString()).contains("oa 1");
    JsonNode refused =
        server.json(
            server.send(
                "mei",
                "POST",
                "/api/v1/contribution-checks",
                "{\"proposal\": {\"kind\": \"tags\"}}"));
    assertThat(refused.path("verdict").asText()).isEqualTo("refused");
    int id = submitted();
    JsonNode waiting =
        server.json(server.send("omar", "POST", "/api/v1/contribution-checks", check));
    assertThat(waiting.path("verdict").asText()).isEqualTo("waiting");
    assertThat(waiting.path("waiting").path(0).asInt()).isEqualTo(id);
    assertThat(ids(ALL)).containsExactly(id);
  }
}
