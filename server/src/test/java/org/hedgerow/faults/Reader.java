package org.hedgerow.faults;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.hedgerow.faults.FaultClient.Call;

/** Reads lists, words and pages, as visitors do. */
final class Reader implements Runnable {
  private static final long PAUSE = 40;

  static final List<String> PATHS =
      List.of(
          "/api/v1/words?phonogram=ee&limit=50",
          "/api/v1/words?phonogram=oa",
          "/api/v1/words?shape=cvc&limit=200",
          "/api/v1/words/boat",
          "/api/v1/phonograms",
          "/api/v1/sounds/OW",
          "/api/v1/sequences",
          "/api/v1/needs",
          "/?phonogram=sh&value=1",
          "/words/ship");

  private final FaultClient client;
  private final Supplier<List<String>> servers;
  private final boolean mustWork;
  private final BooleanSupplier over;

  /**
   * @param mustWork whether every read must be answered 200
   */
  Reader(
      FaultClient client, Supplier<List<String>> servers, boolean mustWork, BooleanSupplier over) {
    this.client = client;
    this.servers = servers;
    this.mustWork = mustWork;
    this.over = over;
  }

  @Override
  public void run() {
    while (!over.getAsBoolean()) {
      read(PATHS.get(ThreadLocalRandom.current().nextInt(PATHS.size())));
      Writing.pause(PAUSE);
    }
  }

  private void read(String path) {
    List<String> all = servers.get();
    String server = all.get(ThreadLocalRandom.current().nextInt(all.size()));
    Optional<HttpResponse<String>> answer = client.ask(server, Call.get(path, ""));
    int status = answer.map(HttpResponse::statusCode).orElse(0);
    if (mustWork && status != 200) {
      client.tally().trouble("a read answered %d".formatted(status));
    }
  }
}
