package org.hedgerow.faults;

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
import java.util.Map;
import java.util.Optional;

/** Asks servers on this machine and counts their answers. Thread-safe. */
final class FaultClient {
  /** After that nobody waits any more, and it counts as a hang. */
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private static final ObjectMapper JSON = new ObjectMapper();

  /**
   * @param key for {@code Idempotency-Key}; empty for none
   * @param revision for {@code If-Match}; 0 for none
   */
  record Call(String method, String path, String token, String key, int revision, String body) {
    static Call get(String path, String token) {
      return new Call("GET", path, token, "", 0, "");
    }

    static Call write(
        String method, String path, String token, String key, int revision, Map<String, ?> body) {
      return new Call(
          method,
          path,
          token,
          key,
          revision,
          body.isEmpty() ? "" : JSON.valueToTree(body).toString());
    }
  }

  private final HttpClient http =
      HttpClient.newBuilder()
          .version(HttpClient.Version.HTTP_1_1)
          .connectTimeout(Duration.ofSeconds(3))
          .build();

  private final Tally tally;

  FaultClient(Tally tally) {
    this.tally = tally;
  }

  Tally tally() {
    return tally;
  }

  /** The answer, or nothing if the server is gone. */
  Optional<HttpResponse<String>> ask(String server, Call call) {
    String name =
        call.method() + " " + call.path().replaceAll("\\?.*", "").replaceAll("/[0-9]+", "/N");
    long start = System.nanoTime();
    try {
      HttpResponse<String> answer = http.send(request(server, call), BodyHandlers.ofString());
      boolean waits = answer.headers().firstValue("Retry-After").isPresent();
      tally.answered(name, answer.statusCode(), waits, since(start));
      return Optional.of(answer);
    } catch (IOException gone) {
      tally.gone(name, since(start));
      return Optional.empty();
    } catch (InterruptedException interruption) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  private static HttpRequest request(String server, Call call) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(server + call.path()))
            .timeout(PATIENCE)
            .method(call.method(), BodyPublishers.ofString(call.body()));
    header(request, "Authorization", call.token().isEmpty() ? "" : "Bearer " + call.token());
    header(request, "Idempotency-Key", call.key().isEmpty() ? "" : "\"" + call.key() + "\"");
    header(request, "If-Match", call.revision() == 0 ? "" : "\"" + call.revision() + "\"");
    header(request, "Content-Type", call.body().isEmpty() ? "" : "application/json");
    return request.build();
  }

  private static void header(HttpRequest.Builder request, String name, String value) {
    if (!value.isEmpty()) {
      request.header(name, value);
    }
  }

  private static Duration since(long start) {
    return Duration.ofNanos(System.nanoTime() - start);
  }

  static JsonNode tree(HttpResponse<String> answer) {
    try {
      return JSON.readTree(answer.body());
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
