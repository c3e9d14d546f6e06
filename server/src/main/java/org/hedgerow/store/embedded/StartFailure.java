package org.hedgerow.store.embedded;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Why one of PostgreSQL's programs failed, from what it printed, and what helps. */
record StartFailure(PostgresBinaries engine, Path log) {
  private static final List<String> TELLING =
      List.of("FATAL:", "PANIC:", "error:", "is not a database cluster", "cannot", "could not");

  private static final List<String> OF_THE_DATA =
      List.of(
          "PANIC", "pg_control", "PG_VERSION", "checkpoint", "invalid", "not a database cluster");

  private static final List<String> OF_THE_PROGRAMS =
      List.of("not the same version", "could not execute", "shared librar", "needed by", "error=");

  /** What stands before PostgreSQL's words: progress, time and process. */
  private static final Pattern BEFORE = Pattern.compile("^.*?(?=(?:FATAL|PANIC): )");

  private static final Map<String, String> ADVICE =
      Map.of(
          "incompatible",
          "Start the Hedgerow that made the folder, export its bank, and import that into a new folder.",
          "No space left",
          "Make room on the disk, then start again.",
          "Permission denied",
          "Start as the user that the folder belongs to.");

  /** One line. */
  String message() {
    return message(told().orElse("PostgreSQL doesn't say why"));
  }

  String message(String reason) {
    return "The embedded database doesn't start: %s. %s (More in %s.)"
        .formatted(BEFORE.matcher(reason).replaceFirst("").strip(), advice(reason), log);
  }

  private Optional<String> told() {
    List<String> lines = lines();
    return TELLING.stream()
        .flatMap(sign -> lines.stream().filter(line -> line.contains(sign)))
        .findFirst();
  }

  private String advice(String reason) {
    for (Map.Entry<String, String> each : ADVICE.entrySet()) {
      if (reason.contains(each.getKey())) {
        return each.getValue();
      }
    }
    if (OF_THE_PROGRAMS.stream().anyMatch(reason::contains)) {
      return "PostgreSQL's programs are damaged: delete %s; they are unpacked again at the next start."
          .formatted(engine.home());
    }
    return OF_THE_DATA.stream().anyMatch(reason::contains)
        ? "The data folder is damaged: restore a backup."
        : "If the data folder is damaged, restore a backup.";
  }

  private List<String> lines() {
    try {
      return Files.readString(log, StandardCharsets.ISO_8859_1).lines().toList();
    } catch (IOException noneYet) {
      return List.of();
    }
  }
}
