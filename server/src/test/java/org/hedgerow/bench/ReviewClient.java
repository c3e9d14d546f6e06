package org.hedgerow.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/** Asks one server, and counts its failures. Safe for several threads. */
final class ReviewClient {
  private static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final ObjectMapper JSON = new ObjectMapper();

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final AtomicInteger failures = new AtomicInteger();
  private final String address;

  ReviewClient(String address) {
    this.address = address;
  }

  HttpResponse<String> get(String path, String token) {
    return send(request(path, token).GET().build());
  }

  /**
   * @param revision for {@code If-Match}; 0 for none
   */
  HttpResponse<String> json(String method, String path, String token, int revision, Object body) {
    HttpRequest.Builder request =
        request(path, token)
            .header("Content-Type", "application/json")
            .method(method, BodyPublishers.ofString(JSON.valueToTree(body).toString()));
    if (revision > 0) {
      request.header("If-Match", "\"" + revision + "\"");
    }
    return send(request.build());
  }

  HttpResponse<String> csv(String path, String token, String body) {
    return send(
        request(path, token)
            .header("Content-Type", "text/csv")
            .POST(BodyPublishers.ofString(body))
            .build());
  }

  private HttpRequest.Builder request(String path, String token) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(address + path)).timeout(PATIENCE);
    return token.isEmpty() ? request : request.header("Authorization", "Bearer " + token);
  }

  private HttpResponse<String> send(HttpRequest request) {
    try {
      HttpResponse<String> answer = client.send(request, BodyHandlers.ofString());
      if (answer.statusCode() >= 500 && failures.incrementAndGet() < 5) {
        System.out.println(request.uri() + " " + answer.statusCode() + " " + answer.body());
      }
      return answer;
    } catch (IOException problem) {
      failures.incrementAndGet();
      throw new UncheckedIOException(problem);
    } catch (InterruptedException interruption) {
      throw new IllegalStateException(interruption);
    }
  }

  int failures() {
    return failures.get();
  }

  static JsonNode tree(HttpResponse<String> answer) {
    try {
      return JSON.readTree(answer.body());
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  static Map<String, Object> proposal(MadeUpWord word) {
    return Map.of(
        "proposal",
        Map.of(
            "kind",
            "word",
            "spelling",
            word.spelling(),
            "pronunciations",
            List.of(Map.of("accent", "en-US", "sounds", word.sounds()))));
  }
}
