package org.hedgerow.faults;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.hedgerow.bench.MadeUpWord;

/** Drafts one word after the other and submits most of them. */
final class Contributor implements Runnable {
  private static final String PATH = "/api/v1/contributions";
  private static final long PAUSE = 600;

  private final Writing writing;
  private final int number;
  private final String token;
  private final AtomicInteger nextWord;
  private final Ledger ledger;
  private final BooleanSupplier over;

  /**
   * @param nextWord numbers of words that nobody has contributed
   */
  Contributor(
      Writing writing,
      int number,
      String token,
      AtomicInteger nextWord,
      Ledger ledger,
      BooleanSupplier over) {
    this.writing = writing;
    this.number = number;
    this.token = token;
    this.nextWord = nextWord;
    this.ledger = ledger;
    this.over = over;
  }

  @Override
  public void run() {
    while (!over.getAsBoolean()) {
      contribute(MadeUpWord.of(nextWord.getAndIncrement()));
      Writing.pause(PAUSE);
    }
  }

  private void contribute(MadeUpWord word) {
    Optional<JsonNode> made =
        writing
            .send("POST", PATH, token, 0, Map.of("proposal", proposal(word)))
            .filter(answer -> answer.statusCode() / 100 == 2)
            .map(FaultClient::tree);
    made.ifPresent(
        contribution -> {
          int id = contribution.path("id").asInt();
          ledger.written(id, new Ledger.Written(number, word.spelling(), false));
          submit(id, contribution.path("revision").asInt(), word);
        });
  }

  private void submit(int id, int revision, MadeUpWord word) {
    writing
        .send("POST", PATH + "/" + id + "/submission", token, revision, Map.of())
        .filter(answer -> answer.statusCode() == 200)
        .ifPresent(answer -> ledger.written(id, new Ledger.Written(number, word.spelling(), true)));
  }

  private static Map<String, Object> proposal(MadeUpWord word) {
    Map<String, String> saying = Map.of("accent", "en-US", "sounds", word.sounds());
    return Map.of("kind", "word", "spelling", word.spelling(), "pronunciations", List.of(saying));
  }
}
