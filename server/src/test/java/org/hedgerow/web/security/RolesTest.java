package org.hedgerow.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.web.Route;
import org.hedgerow.web.testing.PeopleServer;
import org.hedgerow.web.testing.PeopleServer.Client;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every role at every route, from the table of routes itself. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RolesTest {
  private PeopleServer server = PeopleServer.start();
  private final Map<Role, String> tokens = new EnumMap<>(Role.class);

  @BeforeAll
  void people() {
    for (Role role : Role.values()) {
      if (role != Role.VISITOR) {
        Actor actor = server.person(role.label(), role);
        tokens.put(role, server.accounts().tokens().make(actor, "a program", role, 366).text());
      }
    }
  }

  @AfterAll
  void stop() {
    server.close();
  }

  Stream<Arguments> everyRoleAtEveryRoute() {
    return server.routes().stream()
        .flatMap(route -> Arrays.stream(Role.values()).map(role -> Arguments.of(route, role)));
  }

  @ParameterizedTest
  @MethodSource("everyRoleAtEveryRoute")
  void letsThoseInWhoMay(Route route, Role role) throws Exception {
    HttpResponse<String> answer = ask(route, role);
    if (role.allows(route.role())) {
      assertThat(isRefused(answer)).as(answer.toString()).isFalse();
      assertThat(answer.statusCode()).isNotEqualTo(500);
    } else if (role != Role.VISITOR) {
      assertThat(answer.statusCode()).isEqualTo(403);
      if (!route.method().equals("HEAD")) {
        assertThat(answer.body()).contains(route.role().label());
      }
    } else if (route.isSafe() && !route.path().startsWith("/api/")) {
      assertThat(answer.statusCode()).isEqualTo(303);
      assertThat(answer.headers().firstValue("Location").orElse("")).contains("/sign-in?then=%2F");
    } else {
      assertThat(answer.statusCode()).isEqualTo(401);
    }
  }

  private static boolean isRefused(HttpResponse<String> answer) {
    boolean status = List.of(401, 403).contains(answer.statusCode()) && !isWrongPassword(answer);
    return status || answer.headers().firstValue("Location").orElse("").contains("/sign-in?then");
  }

  private static boolean isWrongPassword(HttpResponse<String> answer) {
    return answer.body().contains("The name or the password is wrong");
  }

  private HttpResponse<String> ask(Route route, Role role) throws Exception {
    Client client = server.client();
    String path = route.path().replace("{id}", "4711").replaceAll("\\{\\w+}", "x");
    if (path.startsWith("/api/") && role != Role.VISITOR) {
      return client.send(route.method(), path, "", "Authorization", "Bearer " + tokens.get(role));
    }
    if (role != Role.VISITOR) {
      client.signIn(role.label());
    }
    if (route.form()) {
      server.clock().goOn(Duration.ofHours(1));
      return client.post(path, client.token("/sign-in"));
    }
    return route.isSafe() || role == Role.VISITOR
        ? client.send(route.method(), path, "")
        : client.send(route.method(), path, "", FormTokens.HEADER, client.token("/account"));
  }

  @Test
  void whatABrowserChangesMustComeFromOurPages() throws Exception {
    Client client = server.client().signIn(Role.ADMINISTRATOR.label());
    List<Route> changing =
        server.routes().stream()
            .filter(route -> !route.isSafe() && route.role() != Role.VISITOR)
            .toList();
    assertThat(changing).hasSizeGreaterThan(15);
    for (Route route : changing) {
      String path = route.path().replaceAll("\\{\\w+}", "4711");
      HttpResponse<String> answer = client.send(route.method(), path, "");
      assertThat(answer.statusCode()).as(route.toString()).isEqualTo(403);
    }
  }

  @Test
  void onlyReviewersDecide() {
    assertThat(
            server.routes().stream()
                .filter(route -> route.path().matches("/api/v1/.*(decisions|review-queue)")))
        .hasSize(4)
        .allMatch(route -> route.role() == Role.REVIEWER);
    assertThat(
            server.routes().stream()
                .filter(
                    route ->
                        route.path().startsWith("/api/v1/contribution")
                            && !route.path().endsWith("decisions")))
        .hasSizeGreaterThan(8)
        .allMatch(route -> route.role() == Role.CONTRIBUTOR);
  }

  /** Whoever adds a route must say who may; this keeps the table from changing unseen. */
  @Test
  void onlyAdministratorsLookAfterPeople() {
    assertThat(server.routes().stream().filter(route -> route.path().startsWith("/people")))
        .hasSizeGreaterThan(9)
        .allMatch(route -> route.role() == Role.ADMINISTRATOR);
    assertThat(server.routes().stream().filter(route -> route.path().startsWith("/account")))
        .allMatch(route -> route.role() == Role.CONTRIBUTOR);
    assertThat(
            server.routes().stream()
                .filter(
                    route -> route.path().matches("(/api/v1)?/(people|invitations|audit)(/.*)?")))
        .hasSizeGreaterThan(9)
        .allMatch(route -> route.role() == Role.ADMINISTRATOR);
  }

  @Test
  void everyPagesPostIsAForm() {
    assertThat(
            server.routes().stream()
                .filter(route -> route.method().toUpperCase(Locale.ROOT).equals("POST"))
                .filter(route -> !route.path().startsWith("/api/")))
        .allMatch(Route::form);
  }
}
