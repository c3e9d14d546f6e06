package org.hedgerow.fuzz;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;

/**
 * What the interface speaks of, by the schemas of texts that allow it. Safe for several threads.
 */
final class Vocabulary {
  private static final List<String> WORDS =
      List.of(
          "boat",
          "ship",
          "wool",
          "frog",
          "croak",
          "splosh",
          "broam",
          "tizzop",
          "vendab",
          "melzig",
          "sh",
          "oa",
          "oo",
          "i-e",
          "ch",
          "igh",
          "oo2",
          "sh1",
          "oa 1",
          "oo 2",
          "ours:3",
          "ours:12",
          "en-US",
          "en-GB",
          "en-GB-scotland",
          "en",
          "S HH IH P",
          "ʃ ɪ p",
          "K R OW K",
          "ʃ",
          "SH",
          "OW",
          "cvc",
          "ccvc",
          "1",
          "2",
          "3",
          "1-2",
          "3-5",
          "satpin",
          "start",
          "end",
          "any",
          "default",
          "strict",
          "gentle",
          "ck",
          "no-ck",
          "x",
          "no-reduced-vowels",
          "json",
          "csv",
          "noun",
          "animal",
          "me",
          "The goat sat by the tree.",
          "A frog sat on a log.",
          "A good reason, told in words.",
          "CC0-1.0",
          "2026-11-01",
          "2026-11-01T10:00:00Z",
          "account.",
          "contribution.approved",
          "account.made",
          "Hawthorn",
          "0123456789ab",
          "\"1\"",
          "\"2\"",
          "AAAAAQAAAAEAAAAB");

  private final Map<JsonNode, List<String>> fitting = new ConcurrentHashMap<>();

  /** The words that a schema allows; one that it may not allow if there is none. */
  List<String> fitting(JsonNode schema) {
    return fitting.computeIfAbsent(schema, Vocabulary::find);
  }

  private static List<String> find(JsonNode schema) {
    Pattern pattern = Pattern.compile(schema.path("pattern").asString(""));
    int least = schema.path("minLength").asInt(0);
    int most = schema.path("maxLength").asInt(Integer.MAX_VALUE);
    List<String> found =
        WORDS.stream()
            .filter(word -> word.length() >= least && word.length() <= most)
            .filter(word -> pattern.matcher(word).find())
            .toList();
    return found.isEmpty() ? List.of("oa") : found;
  }
}
