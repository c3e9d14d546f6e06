package org.hedgerow.bench;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One contributor: drafts words, changes the drafts and submits most of them. */
final class Contributing implements Runnable {
  private static final String PATH = "/api/v1/contributions";
  private static final int WORDS = 1500;

  /** In one stretch of load. */
  static final int MAX = WORDS / 3;

  private final ReviewClient client;
  private final String token;
  private final int number;
  private final ReviewRecord record;
  private final int from;
  private final long pause;
  private final long end;

  /**
   * @param from how many words the contributor may have made up before
   */
  Contributing(
      ReviewClient client,
      List<String> tokens,
      int number,
      ReviewRecord record,
      int from,
      long pause,
      long end) {
    this.client = client;
    this.token = tokens.get(number);
    this.number = number;
    this.record = record;
    this.from = from;
    this.pause = pause;
    this.end = end;
  }

  @Override
  public void run() {
    Pausing.first(pause);
    for (int i = from; i < from + MAX && System.nanoTime() < end; i++) {
      contribute(i);
    }
  }

  private void contribute(int turn) {
    MadeUpWord word = MadeUpWord.of(number * WORDS + turn);
    int id = write("POST", PATH, 0, word, ReviewClient.proposal(word));
    if (id == 0) {
      return;
    }
    String path = PATH + "/" + id;
    Map<String, Object> changed = new HashMap<>(ReviewClient.proposal(word));
    changed.put("note", "Said once more: " + turn);
    write("PUT", path, revision(id), word, changed);
    if (turn % 5 != 4) {
      write("POST", path + "/submission", revision(id), word, Map.of());
    }
  }

  private int revision(int id) {
    ReviewRecord.Written written = record.written.get(id);
    return written == null ? 0 : written.revision();
  }

  private int write(String method, String path, int revision, MadeUpWord word, Object body) {
    if (System.nanoTime() > end) {
      return 0;
    }
    long start = System.nanoTime();
    HttpResponse<String> answer = client.json(method, path, token, revision, body);
    record.times().writes.add(System.nanoTime() - start);
    int id = 0;
    if (answer.statusCode() / 100 == 2) {
      JsonNode tree = ReviewClient.tree(answer);
      id = tree.get("id").asInt();
      record.written.put(
          id,
          new ReviewRecord.Written(
              number, word.spelling(), tree.get("revision").asInt(), tree.get("state").asText()));
    } else if (record.times().refused.incrementAndGet() < 3) {
      System.out.println(method + " " + path + ": " + answer.statusCode() + " " + answer.body());
    }
    Pausing.between(pause);
    return id;
  }
}
