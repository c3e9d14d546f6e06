package org.hedgerow.bench;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Whether everything that was acknowledged is there. */
final class ReviewChecks {
  private final ReviewClient client;
  private final ReviewRecord record;
  private final List<String> contributors;
  private final List<String> lost = new ArrayList<>();
  private final String reviewer;

  ReviewChecks(
      ReviewClient client, ReviewRecord record, List<String> contributors, List<String> reviewers) {
    this.client = client;
    this.record = record;
    this.contributors = contributors;
    this.reviewer = reviewers.get(0);
  }

  boolean hold() {
    record.written.forEach(this::checkWritten);
    record.decided.forEach(this::checkDecided);
    checkEditions();
    lost.stream().limit(20).forEach(System.out::println);
    System.out.printf("%d things that were acknowledged are lost%n", lost.size());
    return lost.isEmpty();
  }

  private void require(boolean condition, String otherwise) {
    if (!condition) {
      lost.add(otherwise);
    }
  }

  private JsonNode contribution(int id, String token) {
    return ReviewClient.tree(client.get("/api/v1/contributions/" + id, token));
  }

  private void checkWritten(int id, ReviewRecord.Written written) {
    JsonNode found = contribution(id, contributors.get(written.contributor()));
    ReviewRecord.Decided decided = record.decided.get(id);
    String state = decided == null ? written.state() : decided.state();
    require(
        found.path("state").asText().equals(state)
            && found.path("revision").asInt() == written.revision()
            && found.at("/proposal/spelling").asText().equals(written.spelling()),
        "Contribution %d: %s and not %s %s".formatted(id, found, state, written));
  }

  private void checkDecided(int id, ReviewRecord.Decided decided) {
    JsonNode found = contribution(id, reviewer);
    require(
        found.path("decisions").toString().contains("\"" + decided.decision() + "\""),
        "The decision on " + id);
    if (decided.edition() > 0) {
      String path = "/api/v1/words/" + decided.spelling();
      require(status(path) == 200, decided + " isn't in the newest edition");
      require(
          status(path + "?edition=" + decided.edition()) == 200, decided + " isn't in its edition");
      require(status(path + "?edition=" + (decided.edition() - 1)) == 404, decided + " came early");
    }
  }

  private int status(String path) {
    return client.get(path, "").statusCode();
  }

  private void checkEditions() {
    long published = record.decided.values().stream().filter(each -> each.edition() > 0).count();
    String path = "/api/v1/editions?limit=100";
    int expected = (int) published + 1;
    for (String next = path; !next.isEmpty(); ) {
      JsonNode page = ReviewClient.tree(client.get(next, ""));
      for (JsonNode edition : page.get("editions")) {
        int number = edition.path("number").asInt(edition.path("edition").asInt());
        require(number == expected, "Edition " + expected + ": " + edition);
        expected--;
      }
      next = page.has("next") ? path + "&after=" + page.get("next").asText() : "";
    }
    require(expected == 0, expected + " editions are missing");
  }
}
