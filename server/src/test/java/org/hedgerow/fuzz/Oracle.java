package org.hedgerow.fuzz;

import java.net.URI;
import java.net.URISyntaxException;
import java.net.http.HttpHeaders;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.hedgerow.web.contract.Exchange;
import org.hedgerow.web.contract.OpenApiContract;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What no answer may be, whatever was asked. Safe for several threads. */
public final class Oracle {
  private static final Set<Integer> FOR_A_WHILE = Set.of(503, 507);

  /** What isn't implemented of HTTP, said to whoever asked for it. */
  private static final Set<Integer> FOR_ODD_HTTP = Set.of(501, 505);

  private static final String PROBLEM = "application/problem+json";

  /** A server may close a connection on which more is sent than it will ever read. */
  private static final int LARGE = 60_000;

  private static final Pattern INNARDS =
      Pattern.compile(
          "\\bat [\\w.$/]+\\([\\w ]+(\\.java:\\d+)?\\)|org\\.(hedgerow|eclipse|postgresql|jdbi)\\."
              + "|(com\\.fasterxml|io\\.javalin|java\\.(lang|util|io|sql))\\."
              + "|\\w+(Exception|Error)\\b: |SQLSTATE|\\bselect \\w+ from\\b");

  private static final JsonMapper JSON = new JsonMapper();

  private final Optional<OpenApiContract> contract;
  private final Duration longest;

  private Oracle(Duration longest, Optional<OpenApiContract> contract) {
    this.longest = longest;
    this.contract = contract;
  }

  /**
   * @param longest that an answer may take
   */
  public static Oracle within(Duration longest) {
    return new Oracle(longest, Optional.empty());
  }

  /** The same, which also holds every exchange of the interface against the OpenAPI document. */
  public Oracle withContract() {
    return new Oracle(longest, Optional.of(OpenApiContract.published()));
  }

  /** What is wrong with an answer, in words; nothing if nothing is. */
  List<String> errors(HostileRequest request, Answer answer) {
    List<String> errors = new ArrayList<>();
    late(answer).ifPresent(errors::add);
    if (answer.isMissing()) {
      missing(request).ifPresent(errors::add);
      return errors;
    }
    status(request, answer).ifPresent(errors::add);
    innards(answer).ifPresent(errors::add);
    reflected(answer).ifPresent(errors::add);
    if (answer.status() >= 400) {
      refusal(request, answer).ifPresent(errors::add);
    }
    contract.ifPresent(document -> errors.addAll(breaches(document, request, answer)));
    return errors;
  }

  private Optional<String> late(Answer answer) {
    return answer.time().compareTo(longest) > 0
        ? Optional.of("more than %d s".formatted(longest.toSeconds()))
        : Optional.empty();
  }

  private static Optional<String> missing(HostileRequest request) {
    boolean may = request.broken() || request.body().length() > LARGE;
    return may ? Optional.empty() : Optional.of("no answer");
  }

  private static Optional<String> status(HostileRequest request, Answer answer) {
    boolean due =
        FOR_A_WHILE.contains(answer.status())
            && answer.headers().firstValue("Retry-After").isPresent();
    boolean odd = request.broken() && FOR_ODD_HTTP.contains(answer.status());
    return answer.status() < 500 || due || odd
        ? Optional.empty()
        : Optional.of("status " + answer.status());
  }

  private static Optional<String> innards(Answer answer) {
    return INNARDS
        .matcher(answer.body())
        .results()
        .map(match -> "tells its innards: " + match.group())
        .findFirst();
  }

  private static Optional<String> reflected(Answer answer) {
    if (answer.headers().firstValue(Nasty.SPLIT).isPresent()) {
      return Optional.of("lets a request write headers");
    }
    return answer.mediaType().equals("text/html") && answer.body().contains(Nasty.MARKUP)
        ? Optional.of("reflects markup")
        : Optional.empty();
  }

  private static Optional<String> refusal(HostileRequest request, Answer answer) {
    if (!answer.headers().firstValue("X-Content-Type-Options").orElse("").equals("nosniff")) {
      return Optional.of("%d without nosniff".formatted(answer.status()));
    }
    if (answer.mediaType().equals("text/html") && !request.isToInterface()) {
      return Optional.empty();
    }
    if (!answer.mediaType().equals(PROBLEM)) {
      return Optional.of("%d as %s".formatted(answer.status(), answer.mediaType()));
    }
    return request.isHead() || isProblem(answer)
        ? Optional.empty()
        : Optional.of("%d isn't told as a problem".formatted(answer.status()));
  }

  private static boolean isProblem(Answer answer) {
    try {
      JsonNode body = JSON.readTree(answer.body());
      return body.path("type").asString("").startsWith("/docs/problems#")
          && !body.path("title").asString("").isBlank()
          && !body.path("detail").asString("").isBlank()
          && body.path("status").asInt(0) == answer.status();
    } catch (JacksonException problem) {
      return false;
    }
  }

  /** The document speaks of addresses that are addresses, and of texts. */
  private static List<String> breaches(
      OpenApiContract contract, HostileRequest request, Answer answer) {
    if (request.broken() || !request.isToInterface() || request.target().contains("pictures")) {
      return List.of();
    }
    try {
      URI address = new URI("http://localhost" + request.target());
      return contract.breaches(
          new Exchange(
              request.method(),
              address,
              headers(request),
              request.body(),
              answer.status(),
              answer.headers(),
              answer.body()));
    } catch (URISyntaxException unusual) {
      return List.of();
    }
  }

  private static HttpHeaders headers(HostileRequest request) {
    String type = request.header("Content-Type");
    Map<String, List<String>> headers = new TreeMap<>();
    headers.put("Content-Type", List.of(type));
    return HttpHeaders.of(headers, (name, value) -> !value.isEmpty());
  }
}
