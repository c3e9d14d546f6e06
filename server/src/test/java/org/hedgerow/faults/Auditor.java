package org.hedgerow.faults;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.faults.FaultClient.Call;

/** Looks in the bank for everything that was acknowledged, once the weather is good again. */
final class Auditor {
  private static final String PATH = "/api/v1/contributions";

  private final FaultClient client = new FaultClient(new Tally());
  private final String server;
  private final Crew crew;
  private final Ledger ledger;
  private final List<String> lost = new ArrayList<>();
  private final List<String> doubled = new ArrayList<>();
  private final List<String> halfDone = new ArrayList<>();

  Auditor(String server, Crew crew, Ledger ledger) {
    this.server = server;
    this.crew = crew;
    this.ledger = ledger;
  }

  Reckoning reckon() {
    Map<Integer, JsonNode> held = held();
    findDoubled(held);
    ledger.written().forEach((id, what) -> findWritten(found(held, id), id, what));
    ledger.decided().forEach((id, what) -> findDecided(found(held, id), id, what));
    compareEditions(held);
    return new Reckoning(ledger.size(), lost, doubled, halfDone);
  }

  /** All that contributors see of their own contributions. */
  private Map<Integer, JsonNode> held() {
    Map<Integer, JsonNode> held = new HashMap<>();
    for (String token : crew.contributors()) {
      pages(PATH + "?author=me&limit=200", token, "contributions")
          .forEach(each -> held.put(each.path("id").asInt(), each));
    }
    return held;
  }

  private List<JsonNode> pages(String path, String token, String member) {
    List<JsonNode> all = new ArrayList<>();
    for (String next = path; !next.isEmpty(); ) {
      JsonNode page = json(next, token);
      page.path(member).forEach(all::add);
      next = page.has("next") ? path + "&after=" + page.get("next").asText() : "";
    }
    return all;
  }

  private JsonNode json(String path, String token) {
    HttpResponse<String> answer =
        client
            .ask(server, Call.get(path, token))
            .orElseThrow(() -> new IllegalStateException("The server is gone: " + path));
    if (answer.statusCode() != 200) {
      throw new IllegalStateException(path + ": " + answer.statusCode() + " " + answer.body());
    }
    return FaultClient.tree(answer);
  }

  /** Every word was contributed once, so two contributions of it come of one that was repeated. */
  private void findDoubled(Map<Integer, JsonNode> held) {
    Map<String, Integer> first = new HashMap<>();
    held.forEach(
        (id, each) -> {
          String spelling = each.at("/proposal/spelling").asText();
          Integer other = first.putIfAbsent(spelling, id);
          if (other != null) {
            doubled.add("%s is in %d and %d".formatted(spelling, other, id));
          }
        });
  }

  private static JsonNode found(Map<Integer, JsonNode> held, int id) {
    return held.getOrDefault(id, MissingNode.getInstance());
  }

  private void findWritten(JsonNode found, int id, Ledger.Written what) {
    if (!found.at("/proposal/spelling").asText().equals(what.spelling())) {
      lost.add("contribution %d, %s: %s".formatted(id, what, found));
    } else if (what.submitted() && found.path("state").asText().equals("draft")) {
      lost.add("submission of %d, %s".formatted(id, what));
    }
  }

  private void findDecided(JsonNode listed, int id, Ledger.Decided what) {
    JsonNode found = json(PATH + "/" + id, crew.reviewer());
    List<String> decisions = found.path("decisions").findValuesAsText("decision");
    if (decisions.isEmpty()) {
      lost.add("decision on %d: %s".formatted(id, listed));
    } else if (decisions.size() > 1) {
      doubled.add("decisions on %d: %s".formatted(id, decisions));
    }
    if (what.edition() > 0 && found.path("edition").asInt(what.edition()) != what.edition()) {
      lost.add("edition %d of %d: %s".formatted(what.edition(), id, found));
    }
  }

  /** Every approval made an edition, and every edition has its word. */
  private void compareEditions(Map<Integer, JsonNode> held) {
    List<String> approved =
        held.values().stream()
            .filter(each -> each.path("state").asText().equals("approved"))
            .map(each -> each.at("/proposal/spelling").asText())
            .toList();
    int editions = pages("/api/v1/editions?limit=100", "", "editions").size();
    if (editions != approved.size() + 1) {
      halfDone.add("%d approved, but %d editions".formatted(approved.size(), editions));
    }
    for (String spelling : approved) {
      int status =
          client
              .ask(server, Call.get("/api/v1/words/" + spelling, ""))
              .map(HttpResponse::statusCode)
              .orElse(0);
      if (status != 200) {
        halfDone.add("%s is approved, but not in the bank: %d".formatted(spelling, status));
      }
    }
  }
}
