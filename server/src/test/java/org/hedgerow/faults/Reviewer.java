package org.hedgerow.faults;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.BooleanSupplier;

/** Decides on one contribution of the queue after the other; approves three of four. */
final class Reviewer implements Runnable {
  private static final long PAUSE = 150;

  private final Writing writing;
  private final String token;
  private final Ledger ledger;
  private final BooleanSupplier over;

  Reviewer(Writing writing, String token, Ledger ledger, BooleanSupplier over) {
    this.writing = writing;
    this.token = token;
    this.ledger = ledger;
    this.over = over;
  }

  @Override
  public void run() {
    while (!over.getAsBoolean()) {
      writing.read("/api/v1/review-queue?limit=50", token).ifPresent(this::decideOne);
      Writing.pause(PAUSE);
    }
  }

  private void decideOne(JsonNode queue) {
    JsonNode waiting = queue.path("waiting");
    if (!waiting.isEmpty()) {
      int chosen = ThreadLocalRandom.current().nextInt(waiting.size());
      decide(waiting.get(chosen).path("contribution"));
    }
  }

  private void decide(JsonNode contribution) {
    int id = contribution.path("id").asInt();
    String decision = id % 4 == 3 ? "decline" : "approve";
    writing
        .send(
            "POST",
            "/api/v1/contributions/%d/decisions".formatted(id),
            token,
            contribution.path("revision").asInt(),
            Map.of("decision", decision, "comment", "Looked at."))
        .filter(answer -> answer.statusCode() == 200)
        .map(FaultClient::tree)
        .ifPresent(
            answer ->
                ledger.decided(id, new Ledger.Decided(decision, answer.path("edition").asInt())));
  }
}
