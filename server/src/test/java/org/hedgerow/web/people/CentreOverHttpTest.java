package org.hedgerow.web.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.web.contract.Exchange;
import org.hedgerow.web.contract.OpenApiContract;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The centre, for programs and on its page. */
class CentreOverHttpTest {
  private static final String CENTRE = "/api/v1/centre";

  private final PeopleServer server = PeopleServer.start();
  private Actor ada;
  private PeopleServer.Program program;

  @BeforeEach
  void ada() {
    ada = server.person("ada", Role.ADMINISTRATOR);
    program = server.program(ada);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  @Test
  void anybodyReadsItAndAdministratorsChangeIt() throws Exception {
    HttpResponse<String> first = server.client().get(CENTRE);
    OpenApiContract.published().require(Exchange.of(first));
    assertThat(first.body()).isEqualTo("{\"approvals\":1}");
    String tag = first.headers().firstValue("ETag").orElseThrow();
    assertThat(server.client().get(CENTRE, "If-None-Match", tag).statusCode()).isEqualTo(304);

    HttpResponse<String> changed =
        program.send("PATCH", CENTRE, "{\"name\": \"مركز الزعرور\"}", "If-Match", tag);
    assertThat(changed.statusCode()).isEqualTo(200);
    HttpResponse<String> unseen = program.send("PATCH", CENTRE, "{\"approvals\": 2}");
    assertThat(unseen.statusCode()).isEqualTo(428);
    assertThat(unseen.body()).contains("revision-required", "the ETag of the centre");
    assertThat(program.send("PATCH", CENTRE, "{\"approvals\": 2}", "If-Match", "*").statusCode())
        .isEqualTo(200);
    HttpResponse<String> now = server.client().get(CENTRE, "If-None-Match", tag);
    assertThat(now.body()).isEqualTo("{\"name\":\"مركز الزعرور\",\"approvals\":2}");

    HttpResponse<String> late =
        program.send("PATCH", CENTRE, "{\"name\": \"Blackthorn\"}", "If-Match", tag);
    assertThat(late.statusCode()).isEqualTo(412);
    assertThat(late.body()).contains("مركز الزعرور", "/docs/problems#changed-meanwhile");
  }

  @Test
  void reviewersDoNotChangeIt() throws Exception {
    PeopleServer.Program reviewer = server.program(ada, Role.REVIEWER);
    assertThat(reviewer.send("PATCH", CENTRE, "{\"approvals\": 2}").statusCode()).isEqualTo(403);
    assertThat(reviewer.get(CENTRE).body()).contains("\"approvals\":1");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"name\": \"\"}",
        "{\"name\": \" \"}",
        "{\"name\": null}",
        "{\"approvals\": 3}",
        "{\"approvals\": 1.5}",
        "{\"approvals\": \"2\"}",
        "{\"motto\": \"x\"}",
        "{\"name\": \"a\\u0000\"}"
      })
  void refusesWhatMakesNoSense(String body) throws Exception {
    assertThat(program.send("PATCH", CENTRE, body, "If-Match", "*").statusCode()).isEqualTo(400);
  }

  @Test
  void everyPageShowsItsNameInAnyScript() throws Exception {
    PeopleServer.Client client = server.client().signIn("ada");
    HttpResponse<String> done =
        client.form("/centre", "/centre", "version", "1", "name", "<i>مركز</i>", "approvals", "2");
    assertThat(done.statusCode()).isEqualTo(303);
    assertThat(client.get("/centre?done=changed").body())
        .contains("The centre is changed", "<option value=\"2\" selected>");
    for (String page :
        new String[] {"/", "/words/boat", "/sign-in", "/nowhere", "/?phonogram=oa&value=1"}) {
      assertThat(server.client().get(page).body())
          .as(page)
          .contains("<bdi>&lt;i&gt;مركز&lt;/i&gt;</bdi>")
          .doesNotContain("<i>مركز");
    }
  }

  @Test
  void theFormOfWhoeverIsLateIsShownAgain() throws Exception {
    PeopleServer.Client client = server.client().signIn("ada");
    client.form("/centre", "/centre", "version", "1", "name", "Hawthorn", "approvals", "1");
    HttpResponse<String> late =
        client.form("/centre", "/centre", "version", "1", "name", "Blackthorn", "approvals", "1");
    assertThat(late.statusCode()).isEqualTo(412);
    assertThat(late.body())
        .contains("id=\"conflict\"", "Hawthorn", "value=\"Blackthorn\"", "value=\"2\"");
    HttpResponse<String> wrong =
        client.form("/centre", "/centre", "version", "2", "name", "", "approvals", "7");
    assertThat(wrong.statusCode()).isEqualTo(400);
    assertThat(wrong.body()).contains("id=\"name-error\"", "id=\"approvals-error\"");
  }
}
