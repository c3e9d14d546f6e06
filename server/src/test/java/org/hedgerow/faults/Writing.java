package org.hedgerow.faults;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.hedgerow.faults.FaultClient.Call;

/**
 * Sends a write until it is answered for good, with the same {@code Idempotency-Key} every time, to
 * one server after the other.
 */
final class Writing {
  private static final long BETWEEN = 200;

  private final FaultClient client;
  private final Supplier<List<String>> servers;
  private final BooleanSupplier given;

  /**
   * @param given whether to give up what wasn't answered yet
   */
  Writing(FaultClient client, Supplier<List<String>> servers, BooleanSupplier given) {
    this.client = client;
    this.servers = servers;
    this.given = given;
  }

  /** The first answer that isn't to be waited for, or nothing if the time was over before. */
  Optional<HttpResponse<String>> send(
      String method, String path, String token, int revision, Map<String, ?> body) {
    Call call = Call.write(method, path, token, UUID.randomUUID().toString(), revision, body);
    for (int turn = ThreadLocalRandom.current().nextInt(100); !given.getAsBoolean(); turn++) {
      List<String> all = servers.get();
      Optional<HttpResponse<String>> answer = client.ask(all.get(turn % all.size()), call);
      if (answer.isPresent() && !isForLater(answer.get())) {
        return answer;
      }
      pause(BETWEEN);
    }
    return Optional.empty();
  }

  /** Also while the same request is still being worked on, perhaps by another server. */
  private static boolean isForLater(HttpResponse<String> answer) {
    int status = answer.statusCode();
    return status == 429
        || status >= 500
        || (status == 409 && answer.body().contains("#still-running"));
  }

  Optional<JsonNode> read(String path, String token) {
    List<String> all = servers.get();
    String server = all.get(ThreadLocalRandom.current().nextInt(all.size()));
    return client
        .ask(server, Call.get(path, token))
        .filter(answer -> answer.statusCode() == 200)
        .map(FaultClient::tree);
  }

  static void pause(long milliseconds) {
    try {
      Thread.sleep(milliseconds);
    } catch (InterruptedException interruption) {
      Thread.currentThread().interrupt();
    }
  }
}
