package org.hedgerow.web.people;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.AuditQuery;
import org.hedgerow.accounts.AuditRecord;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Looking after people by a program. */
class PeopleOverHttpTest {
  private static final String API = "/api/v1";

  private final PeopleServer server = PeopleServer.start();
  private Actor ada;
  private Actor rosa;
  private PeopleServer.Program program;
  private String person;

  @BeforeEach
  void people() {
    ada = server.person("ada", Role.ADMINISTRATOR);
    rosa = server.person("rosa", Role.REVIEWER);
    program = server.program(ada);
    person = API + "/people/" + id(rosa);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private static int id(Actor actor) {
    return actor.requireAccount().id();
  }

  private static JsonNode json(HttpResponse<String> response) throws Exception {
    assertThat(response.statusCode()).as(response.body()).isBetween(200, 201);
    return new ObjectMapper().readTree(response.body());
  }

  private Account account(Actor actor) {
    return server.accounts().people().find(ada, id(actor)).orElseThrow();
  }

  private List<String> done() {
    return server.accounts().audit().find(ada, AuditQuery.newest(100)).items().stream()
        .map(AuditRecord::action)
        .toList();
  }

  private static void assertProblem(HttpResponse<String> answer, int status, String type) {
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
    assertThat(answer.body()).contains("/docs/problems#" + type);
  }

  @Test
  void listsPeopleInParts() throws Exception {
    server.person("zoë", Role.CONTRIBUTOR);
    JsonNode first = json(program.get(API + "/people?limit=2"));
    assertThat(first.path("people").findValuesAsText("name")).containsExactly("ada", "rosa");
    JsonNode rest = json(program.get(API + "/people?after=" + first.path("next").asText()));
    assertThat(rest.path("people").findValuesAsText("name")).containsExactly("zoë");
    assertThat(rest.has("next")).isFalse();
    assertProblem(program.get(API + "/people?limit=501"), 400, "invalid-parameter");
  }

  @Test
  void showsOne() throws Exception {
    JsonNode shown = json(program.get(person));
    assertThat(shown.path("role").asText()).isEqualTo("reviewer");
    assertThat(shown.path("active").asBoolean()).isTrue();
    assertProblem(program.get(API + "/people/4711"), 404, "not-found");
    assertProblem(program.get(API + "/people/rosa"), 404, "not-found");
    assertProblem(program.get(API + "/people/4711/sessions"), 404, "not-found");
    assertProblem(program.get(API + "/people/4711/tokens"), 404, "not-found");
  }

  @Test
  void changesRoleAndAccessTogether() throws Exception {
    String token = server.accounts().tokens().make(rosa, "a script", Role.REVIEWER, 5).text();
    JsonNode now =
        json(
            program.send(
                "PATCH",
                person,
                "{\"role\": \"contributor\", \"active\": false}",
                "If-Match",
                "*"));
    assertThat(now.path("role").asText()).isEqualTo("contributor");
    assertThat(now.path("active").asBoolean()).isFalse();
    assertThat(account(rosa).role()).isEqualTo(Role.CONTRIBUTOR);
    assertThat(done()).startsWith("account.active", "account.role");
    assertThat(server.accounts().tokens().find(new org.hedgerow.accounts.Secret(token))).isEmpty();
  }

  @Test
  void anEditThatIsTooLateChangesNothing() throws Exception {
    String seen = program.get(person).headers().firstValue("ETag").orElseThrow();
    server.accounts().people().changeRole(ada, id(rosa), Role.CONTRIBUTOR);
    List<String> before = done();
    HttpResponse<String> late =
        program.send("PATCH", person, "{\"role\": \"administrator\"}", "If-Match", seen);
    assertProblem(late, 412, "changed-meanwhile");
    assertThat(late.body()).contains("its role is contributor now");
    assertThat(account(rosa).role()).isEqualTo(Role.CONTRIBUTOR);
    assertThat(done()).isEqualTo(before);

    assertProblem(program.send("PATCH", person, "{\"active\": false}"), 428, "revision-required");
    assertThat(account(rosa).active()).isTrue();

    String fresh = program.get(person).headers().firstValue("ETag").orElseThrow();
    assertThat(fresh).isNotEqualTo(seen);
    HttpResponse<String> weak =
        program.send("PATCH", person, "{\"active\": false}", "If-Match", "W/" + fresh);
    assertThat(weak.statusCode()).as("compared strongly").isEqualTo(412);
    HttpResponse<String> intime =
        program.send("PATCH", person, "{\"active\": false}", "If-Match", "\"x\", " + fresh);
    assertThat(intime.statusCode()).isEqualTo(200);
    assertThat(intime.headers().firstValue("ETag")).isNotEqualTo(Optional.of(fresh));
  }

  @Test
  void theOnlyAdministratorStaysOne() throws Exception {
    String self = API + "/people/" + id(ada);
    for (String edit :
        List.of("{\"role\": \"reviewer\"}", "{\"role\": \"reviewer\", \"active\": false}")) {
      assertProblem(program.send("PATCH", self, edit, "If-Match", "*"), 400, "invalid-body");
    }
    assertThat(account(ada).role()).isEqualTo(Role.ADMINISTRATOR);
    assertThat(account(ada).active()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {}                                | invalid-body
          {"role": "queen"}                 | invalid-body
          {"role": "visitor"}               | invalid-body
          {"role": null}                    | invalid-body
          {"active": "yes"}                 | invalid-body
          {"role": "reviewer", "x": 1}      | invalid-body
          {"role":                          | invalid-json
          """)
  void refusesWhatMakesNoSense(String body, String type) throws Exception {
    List<String> before = done();
    assertProblem(program.send("PATCH", person, body), 400, type);
    assertThat(done()).isEqualTo(before);
  }

  @Test
  void showsAndEndsSessions() throws Exception {
    PeopleServer.Client here = server.client().signIn("rosa");
    PeopleServer.Client there = server.client().signIn("rosa");
    JsonNode sessions = json(program.get(person + "/sessions")).path("sessions");
    assertThat(sessions).hasSize(2);
    assertThat(sessions.at("/0/client").asText()).startsWith("Java-http-client");
    int newest = sessions.at("/0/id").asInt();
    assertThat(program.delete(person + "/sessions/" + newest).statusCode()).isEqualTo(204);
    assertThat(there.get("/account").statusCode()).isEqualTo(303);
    assertThat(here.get("/account").statusCode()).isEqualTo(200);
    assertProblem(program.delete(person + "/sessions/" + newest), 404, "not-found");
    assertThat(program.delete(person + "/sessions").statusCode()).isEqualTo(204);
    assertThat(here.get("/account").statusCode()).isEqualTo(303);
  }

  @Test
  void showsAndRevokesTokensOfOthers() throws Exception {
    PeopleServer.Program script = server.program(rosa);
    JsonNode tokens = json(program.get(person + "/tokens")).path("tokens");
    assertThat(tokens).hasSize(1);
    assertThat(tokens.at("/0").has("token")).as("the token itself").isFalse();
    String path = person + "/tokens/" + tokens.at("/0/id").asInt();
    assertThat(program.delete(path).statusCode()).isEqualTo(204);
    assertThat(script.get(API + "/account").statusCode()).isEqualTo(401);
    assertProblem(program.delete(path), 404, "not-found");
  }

  @Test
  void invitesAndWithdraws() throws Exception {
    JsonNode made =
        json(program.send("POST", API + "/invitations", "{\"role\": \"reviewer\", \"days\": 2}"));
    String address = made.path("address").asText();
    assertThat(address).startsWith(server.origin() + "/welcome/");
    assertThat(made.path("expires").asText()).isEqualTo("2026-03-04T08:00:00Z");
    JsonNode open = json(program.get(API + "/invitations")).path("invitations");
    assertThat(open).hasSize(1);
    assertThat(open.at("/0").has("address")).as("shown once").isFalse();
    String path = address.substring(server.origin().length());
    assertThat(server.client().get(path).statusCode()).isEqualTo(200);

    String link = API + "/invitations/" + made.path("id").asInt();
    assertThat(program.delete(link).statusCode()).isEqualTo(204);
    assertThat(server.client().get(path).statusCode()).isEqualTo(404);
    assertProblem(program.delete(link), 404, "not-found");
    for (String body :
        List.of("{}", "{\"role\": \"visitor\"}", "{\"role\": \"reviewer\", \"days\": 91}")) {
      assertProblem(program.send("POST", API + "/invitations", body), 400, "invalid-body");
    }
  }

  @Test
  void makesTokensOfOnesOwnThatMayNoMoreAndLiveNoLonger() throws Exception {
    PeopleServer.Program script = server.program(rosa, Role.CONTRIBUTOR);
    String tokens = API + "/account/tokens";
    JsonNode made =
        json(
            script.send(
                "POST", tokens, "{\"label\": \"رمز\", \"role\": \"contributor\", \"days\": 30}"));
    assertThat(
            server
                .client()
                .get(API + "/account", "Authorization", "Bearer " + made.path("token").asText())
                .statusCode())
        .isEqualTo(200);
    assertThat(json(script.get(tokens)).path("tokens").findValuesAsText("label"))
        .containsExactly("a program", "رمز");
    assertProblem(
        script.send("POST", tokens, "{\"label\": \"x\", \"role\": \"reviewer\", \"days\": 1}"),
        403,
        "not-allowed");
    assertProblem(
        script.send("POST", tokens, "{\"label\": \"x\", \"role\": \"contributor\", \"days\": 31}"),
        400,
        "invalid-body");
    assertProblem(script.send("POST", tokens, "{\"role\": \"contributor\"}"), 400, "invalid-body");
    assertThat(script.delete(tokens + "/" + made.path("id").asInt()).statusCode()).isEqualTo(204);
    assertProblem(script.delete(tokens + "/" + made.path("id").asInt()), 404, "not-found");
  }

  @Test
  void nobodyRevokesTheTokenOfAnotherAsTheirOwn() throws Exception {
    PeopleServer.Program own = server.program(rosa);
    int adas = server.accounts().tokens().of(ada, id(ada)).get(0).id();
    assertProblem(own.delete(API + "/account/tokens/" + adas), 404, "not-found");
    assertThat(program.get(API + "/account").statusCode()).isEqualTo(200);
  }

  @Test
  void aTokenThatIsOverOpensNothing() throws Exception {
    server.clock().goOn(Duration.ofDays(31));
    assertProblem(program.get(API + "/people"), 401, "not-signed-in");
    assertProblem(program.send("PATCH", person, "{\"active\": false}"), 401, "not-signed-in");
    assertThat(account(rosa).active()).isTrue();
  }

  /** A page of another site could make the browser send its cookie along, but not this sign. */
  @Test
  void aBrowsersSessionNeedsASignOfOurPages() throws Exception {
    PeopleServer.Client client = server.client().signIn("ada");
    String json = "application/json";
    HttpResponse<String> forged =
        client.send("PATCH", person, "{\"role\": \"administrator\"}", "Content-Type", json);
    assertProblem(forged, 403, "forged-request");
    assertThat(account(rosa).role()).isEqualTo(Role.REVIEWER);
    HttpResponse<String> ours =
        client.send(
            "PATCH",
            person,
            "{\"role\": \"contributor\"}",
            "Content-Type",
            json,
            "If-Match",
            "*",
            "Hedgerow-Form-Token",
            client.token("/account"));
    assertThat(ours.statusCode()).isEqualTo(200);
  }
}
