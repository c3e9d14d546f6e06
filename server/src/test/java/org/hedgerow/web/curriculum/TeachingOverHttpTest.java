package org.hedgerow.web.curriculum;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.hedgerow.operations.Role;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Programs of administrators keep the reading rules, orders of teaching and sight words. */
class TeachingOverHttpTest {
  private static final String GENTLE = "/api/v1/rules/gentle";
  private static final String MINE = "{\"title\": \"Mine\", \"switches\": [\"ck\"]}";

  private PeopleServer server;
  private PeopleServer.Program program;

  @BeforeEach
  void start() throws Exception {
    server = PeopleServer.start();
    program = server.program(server.person("pia", Role.ADMINISTRATOR));
  }

  @AfterEach
  void stop() {
    server.close();
  }

  @Test
  void sightWordsAreChangedAndWithdrawn() throws Exception {
    String path = "/api/v1/sight-words/ours";
    HttpResponse<String> saved =
        program.send("PUT", path, "{\"title\": \"Ours\", \"words\": [\"The\", \"was\"]}");
    assertThat(saved.statusCode()).isEqualTo(200);
    assertThat(saved.body()).isEqualTo("{\"edition\":2,\"name\":\"ours\"}");
    for (String wrong :
        new String[] {
          "{\"title\": \"Ours\", \"words\": []}",
          "{\"title\": \"Ours\", \"words\": [null]}",
          "{\"title\": \"Ours\", \"words\": [\"the cat\"]}",
          "{\"title\": \"Ours\", \"words\": \"the\"}",
          "{\"words\": [\"the\"]}",
          "null"
        }) {
      assertThat(program.send("PUT", path, wrong, "If-Match", "*").statusCode())
          .as(wrong)
          .isEqualTo(400);
    }
    assertThat(program.send("DELETE", path, "", "If-Match", "*").statusCode()).isEqualTo(200);
    assertThat(program.delete(path).statusCode()).isEqualTo(404);
    assertThat(program.send("DELETE", "/api/v1/sight-words/dolch", "", "If-Match", "*").body())
        .contains("are used by default and can't be withdrawn");
  }

  @Test
  void rulesAndOrdersAreChangedAndWithdrawn() throws Exception {
    HttpResponse<String> saved =
        program.send(
            "PUT", "/api/v1/rules/gentle", "{\"title\": \"Gentle\", \"switches\": [\"x\"]}");
    assertThat(saved.statusCode()).isEqualTo(200);
    assertThat(saved.body()).isEqualTo("{\"edition\":2,\"name\":\"gentle\"}");
    assertThat(
            program
                .send(
                    "PUT",
                    "/api/v1/rules/usual",
                    "{\"title\": \"No\", \"switches\": []}",
                    "If-Match",
                    "*")
                .body())
        .contains("The usual rules are used by default and stay as they are");
    assertThat(
            program
                .send("PUT", "/api/v1/sequences/brief", "{\"title\": \"B\", \"steps\": [[\"qq\"]]}")
                .body())
        .contains("Step 1: “qq” is no phonogram");
    assertThat(
            program
                .send("PUT", "/api/v1/sequences/brief", "{\"title\": \"B\", \"steps\": [[\"sh\"]]}")
                .statusCode())
        .isEqualTo(200);
    assertThat(
            program.send("DELETE", "/api/v1/sequences/brief", "", "If-Match", "\"3\"").statusCode())
        .isEqualTo(200);
    assertThat(program.delete("/api/v1/sequences/brief").statusCode()).isEqualTo(404);
    assertThat(program.send("PUT", "/api/v1/rules/gentle", "{\"title\": 7}").statusCode())
        .isEqualTo(400);
    assertThat(program.send("PUT", "/api/v1/rules/gentle", "null").statusCode()).isEqualTo(400);
  }

  /** Who changes a set sees it first; of two, the second is told what differs. */
  @Test
  void nobodyOverwritesWhatTheyHaveNotSeen() throws Exception {
    String none = tag(program.get("/api/v1/rules"));
    HttpResponse<String> made =
        program.send(
            "PUT", GENTLE, "{\"title\": \"Gentle\", \"switches\": [\"x\"]}", "If-Match", none);
    assertThat(made.statusCode()).isEqualTo(200);
    assertThat(tag(made)).isEqualTo("\"2\"");

    HttpResponse<String> late = program.send("PUT", GENTLE, MINE, "If-Match", none);
    assertThat(late.statusCode()).isEqualTo(412);
    assertThat(late.body())
        .contains("/docs/problems#changed-meanwhile")
        .contains("{\"field\":\"title\",\"yours\":\"Mine\",\"present\":\"Gentle\"}")
        .contains("{\"field\":\"switches[0]\",\"yours\":\"ck\",\"present\":\"x\"}");
    assertThat(program.send("DELETE", GENTLE, "", "If-Match", none).statusCode()).isEqualTo(412);
    assertThat(program.get("/api/v1/rules").body()).contains("\"Gentle\"");

    String seen = tag(program.get("/api/v1/rules"));
    assertThat(program.send("PUT", GENTLE, MINE, "If-Match", seen).statusCode()).isEqualTo(200);
    HttpResponse<String> gone = program.send("DELETE", GENTLE, "", "If-Match", "\"2\"");
    assertThat(gone.statusCode()).isEqualTo(412);
    assertThat(gone.body())
        .contains("\"field\":\"title\",\"yours\":\"Gentle\",\"present\":\"Mine\"");
    assertThat(program.send("DELETE", GENTLE, "", "If-Match", "\"3\"").statusCode()).isEqualTo(200);
    assertThat(program.send("PUT", GENTLE, MINE, "If-Match", "3").statusCode()).isEqualTo(400);
    for (String other : new String[] {"\"99\"", "*", "W/\"4\""}) {
      assertThat(program.send("PUT", GENTLE, MINE, "If-Match", other).statusCode())
          .as(other)
          .isEqualTo(412);
    }
  }

  @Test
  void whoeverReplacesASetSaysWhichTheyHaveSeen() throws Exception {
    String[] onlyNew = {"If-None-Match", "*"};
    assertThat(program.send("PUT", GENTLE, MINE, onlyNew).statusCode()).isEqualTo(200);
    HttpResponse<String> there = program.send("PUT", GENTLE, MINE, onlyNew);
    assertThat(there.statusCode()).isEqualTo(412);
    assertThat(there.body()).contains("changed-meanwhile", "\"present\"");
    for (String method : new String[] {"PUT", "DELETE"}) {
      String body = method.equals("PUT") ? MINE : "";
      HttpResponse<String> unseen = program.send(method, GENTLE, body);
      assertThat(unseen.statusCode()).as(method).isEqualTo(428);
      assertThat(unseen.body()).contains("revision-required", "the edition in which you saw it");
    }
    String seen = tag(program.get("/api/v1/rules"));
    HttpResponse<String> listed =
        program.send("PUT", GENTLE, MINE, "If-Match", "\"1\", W/\"7\", " + seen);
    assertThat(listed.statusCode()).isEqualTo(200);
    assertThat(program.send("DELETE", GENTLE, "", "If-Match", "*").statusCode()).isEqualTo(200);
  }

  /** Another set that changed meanwhile doesn't matter. */
  @Test
  void anEditionThatLeftTheSequenceAloneIsGoodEnough() throws Exception {
    String brief = "/api/v1/sequences/brief";
    String body = "{\"title\": \"B\", \"steps\": [[\"sh\"]]}";
    String seen = tag(program.send("PUT", brief, body));
    program.send("PUT", GENTLE, MINE);
    String longer = "{\"title\": \"B\", \"steps\": [[\"sh\"], [\"ch 1\"]]}";
    assertThat(program.send("PUT", brief, longer, "If-Match", seen).statusCode()).isEqualTo(200);
    HttpResponse<String> late = program.send("PUT", brief, body, "If-Match", seen);
    assertThat(late.statusCode()).isEqualTo(412);
    assertThat(late.body()).contains("steps[1]", "ch 1");
    assertThat(program.send("DELETE", brief, "", "If-Match", seen).statusCode()).isEqualTo(412);
  }

  @Test
  void sightWordsThatChangedAfterTheEditionSeenStay() throws Exception {
    String few = "/api/v1/sight-words/few";
    String body = "{\"title\": \"Few\", \"words\": [\"the\"]}";
    String other = "{\"title\": \"Few\", \"words\": [\"the\", \"was\"]}";
    String none = tag(program.get("/api/v1/sight-words"));
    String seen = tag(program.send("PUT", few, body, "If-Match", none));
    program.send("PUT", GENTLE, MINE);
    assertThat(program.send("PUT", few, other, "If-Match", seen).statusCode()).isEqualTo(200);
    HttpResponse<String> late = program.send("PUT", few, body, "If-Match", seen);
    assertThat(late.statusCode()).isEqualTo(412);
    assertThat(late.body()).contains("{\"field\":\"words[1]\",\"present\":\"was\"}");
    assertThat(program.send("DELETE", few, "", "If-Match", seen).statusCode()).isEqualTo(412);
    assertThat(program.get("/api/v1/sight-words").body()).contains("[\"the\",\"was\"]");
  }

  private static String tag(HttpResponse<String> answer) {
    return answer.headers().firstValue("ETag").orElseThrow();
  }

  @Test
  void anEmptyStepIsNamed() throws Exception {
    assertThat(
            program
                .send(
                    "PUT",
                    "/api/v1/sequences/short",
                    "{\"title\": \"Short\", \"steps\": [[], [\"oo 2\"]]}")
                .body())
        .contains("\"status\":400", "\"parameter\":\"steps[0]\"");
  }
}
