package org.hedgerow.web.people;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.StringReader;
import java.net.http.HttpResponse;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The record of what was done, for programs and on its page. */
class AuditOverHttpTest {
  private static final String AUDIT = "/api/v1/audit";
  private static final String FORMULA = "=HYPERLINK(\"http://evil.example\")";

  private final PeopleServer server = PeopleServer.start();
  private Actor ada;
  private Actor rosa;
  private PeopleServer.Program program;

  @BeforeEach
  void doSomething() {
    ada = server.person("ada", Role.ADMINISTRATOR);
    rosa = server.person("rosa", Role.REVIEWER);
    program = server.program(ada);
    server.accounts().people().rename(rosa, rosa.requireAccount().id(), FORMULA);
    server.accounts().people().rename(ada, ada.requireAccount().id(), "نور <b>الهدى</b>");
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private static JsonNode json(HttpResponse<String> response) throws Exception {
    assertThat(response.statusCode()).isEqualTo(200);
    return new ObjectMapper().readTree(response.body());
  }

  @Test
  void listsTheNewestFirst() throws Exception {
    JsonNode records = json(program.get(AUDIT + "?action=account.")).path("records");
    assertThat(records.findValuesAsText("action"))
        .containsExactly("account.renamed", "account.renamed", "account.made", "account.made");
    assertThat(records.at("/0/after/displayName").asText()).isEqualTo("نور <b>الهدى</b>");
    assertThat(records.at("/0/before/displayName").asText()).isEqualTo("ada");
    assertThat(records.at("/0/account").asInt()).isEqualTo(ada.requireAccount().id());
    assertThat(records.at("/0/at").asText()).isEqualTo("2026-03-02T08:00:00Z");
  }

  @Test
  void goesOnWithNextAndLink() throws Exception {
    HttpResponse<String> first = program.get(AUDIT + "?limit=2&action=account.");
    String next = json(first).path("next").asText();
    String link = first.headers().firstValue("Link").orElseThrow();
    assertThat(link).endsWith(">; rel=\"next\"").contains("after=" + next, "action=account.");
    JsonNode second = json(program.get(link.substring(1, link.indexOf('>'))));
    assertThat(second.path("records")).hasSize(2);
    assertThat(second.has("next")).isFalse();
  }

  @Test
  void comesAsLines() throws Exception {
    List<String> lines = program.get(AUDIT + "?format=ndjson").body().lines().toList();
    assertThat(lines).hasSize(7).allMatch(line -> line.startsWith("{\"id\":"));
  }

  /** OWASP, "CSV Injection": no cell may begin like a formula. */
  @Test
  void comesAsATableWithoutFormulas() throws Exception {
    server.clock().goOn(java.time.Duration.ofSeconds(1));
    PeopleServer.Client formula = server.client();
    String link =
        "/welcome/" + server.accounts().invitations().make(Actor.OPERATOR, Role.REVIEWER, 7).text();
    formula.form(
        link, link, "name", "-at@sum", "displayName", "Sum", "password", PeopleServer.PASSWORD);
    HttpResponse<String> table = program.get(AUDIT, "Accept", "text/csv");
    List<CSVRecord> rows =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(table.body()))
            .getRecords();
    assertThat(rows).hasSizeGreaterThan(8);
    assertThat(rows).extracting(row -> row.get("actor")).contains("'-at@sum", "ada");
    assertThat(rows)
        .allSatisfy(
            row -> assertThat(row.stream()).noneMatch(cell -> cell.matches("(?s)[=+@-].*")));
    assertThat(table.body()).contains("=HYPERLINK");
  }

  @ParameterizedTest
  @CsvSource({
    "limit=501, invalid-parameter",
    "limit=0, invalid-parameter",
    "limit=99999999999999999, invalid-parameter",
    "after=x, invalid-cursor",
    "after=99999999999999999999, invalid-cursor",
    "from=yesterday, invalid-parameter",
    "from=%2B500000-01-01, invalid-parameter",
    "to=2026-02-30, invalid-parameter",
    "to=2026-02-30T25:00:00Z, invalid-parameter",
    "actor=a%00b, invalid-parameter",
    "action=Account, invalid-parameter",
    "action=%25, invalid-parameter",
    "who=ada, unknown-parameter",
    "actor=a&actor=b, repeated-parameter"
  })
  void saysWhatIsWrong(String query, String type) throws Exception {
    HttpResponse<String> answer = program.get(AUDIT + "?" + query);
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("/docs/problems#" + type);
  }

  @Test
  void isForAdministratorsOnly() throws Exception {
    assertThat(server.program(rosa).get(AUDIT).statusCode()).isEqualTo(403);
    assertThat(server.program(ada, Role.REVIEWER).get(AUDIT).statusCode()).isEqualTo(403);
    assertThat(server.client().get(AUDIT).statusCode()).isEqualTo(401);
  }

  @Test
  void aPageShowsItInAnyScript() throws Exception {
    PeopleServer.Client client = server.client().signIn("ada");
    String page = client.get("/audit").body();
    assertThat(page)
        .contains(
            "<bdi>نور &lt;b&gt;الهدى&lt;/b&gt;</bdi>", "Account renamed", "2 March 2026, 08:00 UTC")
        .doesNotContain("<b>");
    assertThat(client.get("/audit?actor=rosa&action=&from=&to=2026-03-02").body())
        .contains("=HYPERLINK", "<bdi>rosa</bdi>")
        .doesNotContain("<bdi>ada</bdi>,");
    assertThat(client.get("/audit?actor=nobody").body()).contains("No activity matches");
    HttpResponse<String> wrong = client.get("/audit?from=x");
    assertThat(wrong.statusCode()).isEqualTo(400);
    assertThat(wrong.body()).contains("id=\"from-error\"", "value=\"x\"");
  }
}
