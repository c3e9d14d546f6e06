package org.hedgerow.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.hedgerow.operations.Role;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Requests sent again, with and without a key, and forms sent twice. The words are invented. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RetriesTest {
  private static final String ALL = "/api/v1/contributions";
  private static final String KEY = "Idempotency-Key";

  private static final String WORD =
      """
      {"proposal": {"kind": "word", "spelling": "%s",
        "pronunciations": [{"accent": "en-US", "sounds": "S P L OW M"}]}, "submit": true}
      """;

  private PeopleServer server;
  private PeopleServer.Program nour;
  private PeopleServer.Program omar;
  private PeopleServer.Program ada;

  @BeforeAll
  void start() {
    server = PeopleServer.start();
    nour = server.program(server.person("nour", Role.CONTRIBUTOR));
    omar = server.program(server.person("omar", Role.CONTRIBUTOR));
    ada = server.program(server.person("ada", Role.ADMINISTRATOR));
  }

  @AfterAll
  void stop() {
    server.close();
  }

  private static String header(HttpResponse<String> response, String name) {
    return response.headers().firstValue(name).orElse("none");
  }

  @Test
  void theFirstAnswerComesAgain() throws Exception {
    String body = WORD.formatted("sploam");
    HttpResponse<String> first = nour.send("POST", ALL, body, KEY, "\"a-key\"");
    HttpResponse<String> again = nour.send("POST", ALL, body, KEY, "a-key");
    assertThat(first.statusCode()).isEqualTo(201);
    assertThat(again.statusCode()).isEqualTo(201);
    assertThat(again.body()).isEqualTo(first.body());
    for (String name : new String[] {"Location", "ETag", "Content-Type"}) {
      assertThat(header(again, name)).as(name).isEqualTo(header(first, name)).isNotEqualTo("none");
    }
    assertThat(omar.send("POST", ALL, body, KEY, "a-key").body())
        .as("a key is one account's")
        .isNotEqualTo(first.body());
  }

  @Test
  void aKeyIsForOneRequest() throws Exception {
    nour.send("POST", ALL, WORD.formatted("sproam"), KEY, "another");
    HttpResponse<String> other = nour.send("POST", ALL, WORD.formatted("spreem"), KEY, "another");
    assertThat(other.statusCode()).isEqualTo(422);
    assertThat(other.body()).contains("key-reused", "a key of its own");
    assertThat(nour.get(ALL).body()).doesNotContain("spreem");
    HttpResponse<String> unreadable = nour.send("POST", ALL, WORD.formatted("x"), KEY, "\"a");
    assertThat(unreadable.statusCode()).isEqualTo(400);
    assertThat(unreadable.body()).contains("Idempotency-Key must be");
  }

  @Test
  void whatWasRefusedIsTriedAnew() throws Exception {
    String bad = WORD.formatted("splim").replace("S P L OW M", "nonsense");
    assertThat(nour.send("POST", ALL, bad, KEY, "refused").statusCode()).isEqualTo(400);
    assertThat(nour.send("POST", ALL, WORD.formatted("splim"), KEY, "refused").statusCode())
        .isEqualTo(201);
  }

  @Test
  void aTokenAndALinkAreMadeOnce() throws Exception {
    String token = "{\"label\": \"a robot\", \"role\": \"contributor\", \"days\": 5}";
    HttpResponse<String> made = nour.send("POST", "/api/v1/account/tokens", token, KEY, "t");
    assertThat(made.statusCode()).isEqualTo(201);
    assertThat(nour.send("POST", "/api/v1/account/tokens", token, KEY, "t").body())
        .isEqualTo(made.body());
    String link = "{\"role\": \"reviewer\"}";
    HttpResponse<String> invited = ada.send("POST", "/api/v1/invitations", link, KEY, "t");
    assertThat(ada.send("POST", "/api/v1/invitations", link, KEY, "t").body())
        .isEqualTo(invited.body());
    assertThat(ada.get("/api/v1/invitations").body().split("\"role\"", -1)).hasSize(2);
  }

  @Test
  void aDecisionIsTakenOnce() throws Exception {
    int id =
        Integer.parseInt(
            header(nour.send("POST", ALL, WORD.formatted("sproof")), "Location")
                .substring(ALL.length() + 1));
    String path = ALL + "/" + id + "/decisions";
    String approve = "{\"decision\": \"approve\"}";
    HttpResponse<String> approved =
        ada.send("POST", path, approve, "If-Match", "\"1\"", KEY, "decide");
    assertThat(approved.statusCode()).as(approved.body()).isEqualTo(200);
    assertThat(ada.send("POST", path, approve, "If-Match", "\"1\"", KEY, "decide").body())
        .isEqualTo(approved.body());
    assertThat(ada.send("POST", path, approve, "If-Match", "\"1\"").statusCode()).isEqualTo(409);
  }

  @Test
  void withoutAKeyTheSameSubmissionAnswersWithTheFirst() throws Exception {
    String body = WORD.formatted("spload");
    HttpResponse<String> first = nour.send("POST", ALL, body);
    HttpResponse<String> again = nour.send("POST", ALL, body);
    assertThat(first.statusCode()).isEqualTo(201);
    assertThat(again.statusCode()).isEqualTo(200);
    assertThat(header(again, "Location")).isEqualTo(header(first, "Location"));
    assertThat(header(omar.send("POST", ALL, body), "Location"))
        .isNotEqualTo(header(first, "Location"));
  }

  @Test
  void aFormSentTwiceMakesOneContribution() throws Exception {
    PeopleServer.Client client = server.client().signIn("omar");
    String token = client.token("/contributions/new?kind=word");
    String[] fields = {
      "kind",
      "word",
      "spelling",
      "sproal",
      "accent-0",
      "en-US",
      "sounds-0",
      "s p ɹ oʊ l",
      "do",
      "submit"
    };
    HttpResponse<String> first = client.post("/contributions/drafts", token, fields);
    HttpResponse<String> second = client.post("/contributions/drafts", token, fields);
    assertThat(first.statusCode()).isEqualTo(303);
    assertThat(second.statusCode()).isEqualTo(303);
    assertThat(header(second, "Location")).isEqualTo(header(first, "Location"));
  }
}
