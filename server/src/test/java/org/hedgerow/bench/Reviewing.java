package org.hedgerow.bench;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;

/** One reviewer: takes something from the front of the queue and decides. */
final class Reviewing implements Runnable {
  private static final int MAX = 2000;
  private static final long MAX_LAG = 10_000_000_000L;
  private static final long LOOK_AGAIN = 10;

  private final ReviewClient client;
  private final Optional<ReviewClient> second;
  private final String token;
  private final ReviewRecord record;
  private final long pause;
  private final long end;

  Reviewing(
      ReviewClient client,
      Optional<ReviewClient> second,
      String token,
      ReviewRecord record,
      long pause,
      long end) {
    this.client = client;
    this.second = second;
    this.token = token;
    this.record = record;
    this.pause = pause;
    this.end = end;
  }

  @Override
  public void run() {
    Pausing.first(pause);
    for (int i = 0; i < MAX && System.nanoTime() < end; i++) {
      long start = System.nanoTime();
      JsonNode waiting =
          ReviewClient.tree(client.get("/api/v1/review-queue?limit=50", token)).path("waiting");
      record.times().queues.add(System.nanoTime() - start);
      if (!waiting.isEmpty()) {
        int chosen = ThreadLocalRandom.current().nextInt(waiting.size());
        decide(waiting.get(chosen).get("contribution"), decision(i));
      }
      Pausing.between(Math.max(pause, 20));
    }
  }

  private static String decision(int turn) {
    return turn % 10 == 8 ? "return" : turn % 10 == 9 ? "decline" : "approve";
  }

  private void decide(JsonNode contribution, String decision) {
    int id = contribution.get("id").asInt();
    String path = "/api/v1/contributions/%d/decisions".formatted(id);
    Map<String, String> body = Map.of("decision", decision, "comment", "Looked at.");
    long start = System.nanoTime();
    HttpResponse<String> answer =
        client.json("POST", path, token, contribution.get("revision").asInt(), body);
    long answered = System.nanoTime();
    record.times().decisions.add(answered - start);
    if (answer.statusCode() == 200) {
      acknowledged(id, decision, ReviewClient.tree(answer), answered);
    } else {
      record.times().conflicts.incrementAndGet();
    }
  }

  private void acknowledged(int id, String decision, JsonNode answer, long answered) {
    String spelling = answer.at("/proposal/spelling").asText();
    record.decided.put(
        id,
        new ReviewRecord.Decided(
            spelling, decision, answer.get("state").asText(), answer.path("edition").asInt()));
    if (decision.equals("approve")) {
      second.ifPresent(
          other -> {
            await(answer.get("edition").asInt(), other, answered);
            require(other.get("/api/v1/words/" + spelling, "").statusCode() == 200, spelling);
          });
    }
  }

  /**
   * Looks at a word that every edition has: to say that a word isn't there takes a search for
   * others that are spelt like it, which would load the machine as nobody's use of the bank does.
   */
  private void await(int edition, ReviewClient other, long answered) {
    while (newest(other) < edition && System.nanoTime() < answered + MAX_LAG) {
      Pausing.between(LOOK_AGAIN);
    }
    record.times().lag.add(System.nanoTime() - answered);
  }

  private static int newest(ReviewClient other) {
    String tag = other.get("/api/v1/words/boat", "").headers().firstValue("ETag").orElseThrow();
    return Integer.parseInt(tag.substring(1, tag.indexOf('-')));
  }

  private static void require(boolean condition, String spelling) {
    if (!condition) {
      throw new IllegalStateException(spelling + " isn't on the second server");
    }
  }
}
