package org.hedgerow.store.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Map;
import java.util.Set;
import org.hedgerow.lexicon.Bytes;
import org.hedgerow.pictures.PictureIntake;
import org.hedgerow.pictures.UnusablePictureException;

/**
 * Reads an archive through before anything of it is written, and refuses what no bank of ours would
 * hold: the database alone would take some of it.
 */
final class ArchiveCheck {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String SVG = "image/svg+xml";

  private final Archive archive;
  private final PictureIntake intake = new PictureIntake();
  private final Map<String, Set<String>> sounds = new HashMap<>();
  private int editions;

  private ArchiveCheck(Archive archive) {
    this.archive = archive;
  }

  /**
   * @throws UnusableArchiveException naming the first line that can't be imported, and why
   */
  static void run(Archive archive) throws IOException {
    ArchiveCheck check = new ArchiveCheck(archive);
    for (ArchivedTable table : archive.tables()) {
      archive.read(table, (line, number) -> check.row(table, line, number));
    }
    check.end();
  }

  private void row(ArchivedTable table, String line, long number) {
    switch (table.name()) {
      case "accounts" -> account(json(table, line, number), number);
      case "editions" -> edition(json(table, line, number), number);
      case "accents" -> accent(json(table, line, number));
      case "realisations", "pronunciations" -> said(table, json(table, line, number), number);
      case "uploads", "pictures" -> picture(table, json(table, line, number), number);
      default -> {}
    }
  }

  private static JsonNode json(ArchivedTable table, String line, long number) {
    try {
      JsonNode row = JSON.readTree(line);
      if (row.isObject()) {
        return row;
      }
    } catch (JsonProcessingException noJson) {
      throw UnusableArchiveException.at(table.file(), number, "is no JSON");
    }
    throw UnusableArchiveException.at(table.file(), number, "is no JSON object");
  }

  private static void account(JsonNode row, long number) {
    if (!row.path("password_hash").asText().equals(ArchivedTable.NO_PASSWORD_HASH)) {
      throw UnusableArchiveException.at(
          "accounts.jsonl", number, "holds a password hash, which no archive does");
    }
  }

  private void edition(JsonNode row, long number) {
    editions++;
    if (row.path("number").asInt() != editions) {
      throw UnusableArchiveException.at(
          "editions.jsonl",
          number,
          "is edition %s where %d should follow"
              .formatted(row.path("number").asText("without a number"), editions));
    }
  }

  private void accent(JsonNode row) {
    Set<String> known = new HashSet<>();
    known.addAll(symbols(row.path("vowels")));
    known.addAll(symbols(row.path("consonants")));
    sounds.put(row.path("tag").asText(), known);
  }

  private static Set<String> symbols(JsonNode text) {
    return new HashSet<>(Arrays.asList(text.asText().split(" ", -1)));
  }

  private void said(ArchivedTable table, JsonNode row, long number) {
    String accent = row.path("accent").asText();
    Set<String> known = sounds.getOrDefault(accent, Set.of());
    for (String sound : symbols(row.path("sounds"))) {
      if (!sound.isEmpty() && !known.contains(sound)) {
        throw UnusableArchiveException.at(
            table.file(), number, "has the sound /%s/, which %s doesn’t".formatted(sound, accent));
      }
    }
  }

  private void picture(ArchivedTable table, JsonNode row, long number) {
    if (!row.path("media_type").asText().equals(SVG)) {
      return;
    }
    byte[] content = content(table, row, number);
    try {
      if (!intake.take(content).content().equals(Bytes.of(content))) {
        throw UnusableArchiveException.at(
            table.file(), number, "has a picture with more in it than shapes");
      }
    } catch (UnusablePictureException refused) {
      throw UnusableArchiveException.at(
          table.file(),
          number,
          "has a picture that isn’t safe to show (%s)".formatted(refused.getMessage()));
    }
  }

  private static byte[] content(ArchivedTable table, JsonNode row, long number) {
    try {
      return HexFormat.of().parseHex(row.path("content").asText().replaceFirst("^\\\\x", ""));
    } catch (IllegalArgumentException noHex) {
      throw UnusableArchiveException.at(table.file(), number, "has a picture that can’t be read");
    }
  }

  private void end() {
    if (editions != archive.manifest().edition()) {
      throw UnusableArchiveException.damaged(
          "editions.jsonl",
          "ends with edition %d, the manifest says %d"
              .formatted(editions, archive.manifest().edition()));
    }
  }
}
