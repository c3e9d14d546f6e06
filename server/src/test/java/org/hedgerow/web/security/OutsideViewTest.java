package org.hedgerow.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What depends on where a request comes from, and by which name it calls the server. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OutsideViewTest {
  private static final String INVITATION = "{\"role\": \"reviewer\"}";

  private final PeopleServer server = PeopleServer.start();
  private String administrator;
  private String reviewer;

  @BeforeAll
  void people() {
    administrator = token(server.person("ada", Role.ADMINISTRATOR));
    reviewer = token(server.person("rosa", Role.REVIEWER));
  }

  private String token(Actor actor) {
    return server.accounts().tokens().make(actor, "a program", actor.role(), 1).text();
  }

  @AfterAll
  void stop() {
    server.close();
  }

  @Test
  void measurementsAreForThisMachineAndForAdministrators() throws Exception {
    assertThat(measurements("")).startsWith("HTTP/1.1 200");
    assertThat(measurements("X-Forwarded-For: 127.0.0.1"))
        .startsWith("HTTP/1.1 401")
        .contains("WWW-Authenticate: Bearer realm=\"hedgerow\"\r\n", "--metrics open");
    String passedOn = "Forwarded: for=10.0.0.7\r\nAuthorization: Bearer ";
    assertThat(measurements(passedOn + administrator)).startsWith("HTTP/1.1 200");
    assertThat(measurements(passedOn + PeopleServer.METRICS_TOKEN)).startsWith("HTTP/1.1 200");
    assertThat(measurements(passedOn + reviewer)).startsWith("HTTP/1.1 401");
    assertThat(measurements(passedOn + "nonsense"))
        .contains("WWW-Authenticate: Bearer realm=\"hedgerow\", error=\"invalid_token\"");
  }

  private String measurements(String headers) throws IOException {
    String lines = headers.isEmpty() ? "" : headers + "\r\n";
    return ask("GET /metrics HTTP/1.1\r\nHost: a\r\nConnection: close\r\n" + lines + "\r\n");
  }

  /** A name that anybody could send leads nobody astray. */
  @ParameterizedTest
  @CsvSource({
    "evil.example, http://127.0.0.1:PORT",
    "evil.example:PORT, http://127.0.0.1:PORT",
    "127.0.0.1.evil.example, http://127.0.0.1:PORT",
    "localhost:PORT, http://localhost:PORT",
    "127.0.0.1:PORT, http://127.0.0.1:PORT"
  })
  void linksNameThisServer(String host, String origin) throws Exception {
    String port = String.valueOf(URI.create(server.origin()).getPort());
    String answer =
        ask(
            "POST /api/v1/invitations HTTP/1.1\r\nHost: %s\r\nConnection: close\r\nAuthorization: Bearer %s\r\nContent-Type: application/json\r\nContent-Length: %d\r\n\r\n%s"
                .formatted(
                    host.replace("PORT", port), administrator, INVITATION.length(), INVITATION));
    assertThat(answer)
        .startsWith("HTTP/1.1 201")
        .contains("\"" + origin.replace("PORT", port) + "/welcome/");
  }

  @Test
  void whoIsNotSignedInLearnsHow() throws Exception {
    String account = "GET /api/v1/account HTTP/1.1\r\nHost: a\r\nConnection: close\r\n%s\r\n";
    assertThat(ask(account.formatted("")))
        .startsWith("HTTP/1.1 401")
        .contains("WWW-Authenticate: Bearer realm=\"hedgerow\"\r\n");
    assertThat(ask(account.formatted("Authorization: Bearer gone\r\n")))
        .contains("WWW-Authenticate: Bearer realm=\"hedgerow\", error=\"invalid_token\"\r\n");
  }

  private String ask(String request) throws IOException {
    URI address = URI.create(server.origin());
    try (Socket socket = new Socket(address.getHost(), address.getPort())) {
      socket.setSoTimeout(20_000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
