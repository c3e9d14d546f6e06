package org.hedgerow.bench;

import java.net.http.HttpResponse;
import java.util.List;

/** A table of a thousand new words without sounds, which the server guesses. */
final class ThousandRows {
  private ThousandRows() {}

  /** How long judging takes at first, in milliseconds. */
  static long judge(ReviewClient client, List<String> tokens) {
    StringBuilder table = new StringBuilder("spelling\n");
    for (int i = 0; i < 1000; i++) {
      table.append(MadeUpWord.of(159_000 - i).spelling()).append('\n');
    }
    long start = System.nanoTime();
    HttpResponse<String> answer =
        client.csv("/api/v1/contribution-tables", tokens.get(0), table.toString());
    long taken = (System.nanoTime() - start) / 1_000_000;
    if (answer.statusCode() != 200) {
      throw new IllegalStateException(answer.body());
    }
    return taken;
  }
}
