package org.hedgerow.web.contract;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URI;
import java.net.URLDecoder;
import java.net.http.HttpHeaders;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A request with its answer, as they went over the wire.
 *
 * @param requestBody empty if nothing was sent
 * @param body of the answer; empty if there is none
 */
public record Exchange(
    String method,
    URI address,
    HttpHeaders requestHeaders,
    String requestBody,
    int status,
    HttpHeaders headers,
    String body) {
  private static final Pattern PROBLEM_TYPE =
      Pattern.compile("\"type\": ?\"/docs/problems#([a-z-]+)\"");

  /** Of a request without a body. */
  public static Exchange of(HttpResponse<String> response) {
    return of("", response);
  }

  public static Exchange of(String requestBody, HttpResponse<String> response) {
    return new Exchange(
        response.request().method(),
        response.uri(),
        response.request().headers(),
        requestBody,
        response.statusCode(),
        response.headers(),
        response.body());
  }

  String path() {
    return address.getRawPath();
  }

  /** The values of each query parameter in the order they were sent, decoded. */
  Map<String, List<String>> query() {
    Map<String, List<String>> query = new LinkedHashMap<>();
    String sent = Optional.ofNullable(address.getRawQuery()).orElse("");
    Arrays.stream(sent.split("&", -1))
        .filter(pair -> !pair.isEmpty())
        .map(pair -> pair.contains("=") ? pair.split("=", 2) : new String[] {pair, ""})
        .forEach(
            pair ->
                query
                    .computeIfAbsent(decoded(pair[0]), name -> new ArrayList<>())
                    .add(decoded(pair[1])));
    return query;
  }

  private static String decoded(String text) {
    return URLDecoder.decode(text, UTF_8);
  }

  boolean isHead() {
    return method.equals("HEAD");
  }

  boolean isRefused() {
    return status >= 400;
  }

  /** The problem that the answer is, if it is one. */
  Optional<RaisedProblem> problem() {
    return Optional.of(PROBLEM_TYPE.matcher(body))
        .filter(matcher -> isRefused() && matcher.find())
        .map(matcher -> new RaisedProblem(matcher.group(1), body.matches(ownStatus())));
  }

  private String ownStatus() {
    return "(?s).*\"status\": ?" + status + "\\b.*";
  }

  /**
   * @param type the last part of its type, such as {@code not-found}
   * @param statusFits whether it names the status of the answer
   */
  record RaisedProblem(String type, boolean statusFits) {}

  static Optional<String> mediaType(HttpHeaders headers) {
    return headers
        .firstValue("Content-Type")
        .map(type -> type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT));
  }

  @Override
  public String toString() {
    return "%s %s, answered %d".formatted(method, address, status);
  }
}
