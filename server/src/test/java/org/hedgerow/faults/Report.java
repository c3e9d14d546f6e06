package org.hedgerow.faults;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;

/** The results as a table in Markdown, with the machine and the command. */
record Report(String command, List<Result> results) {
  private static final int MAX_CELL_LENGTH = 600;

  private static final String HEAD =
      """
      | scenario | what was done | requests | acknowledged | lost | doubled | unexpected | slowest answer | also |
      | --- | --- | ---: | ---: | ---: | ---: | --- | ---: | --- |
      """;

  String markdown() {
    return machine()
        + "\n\n"
        + HEAD
        + results.stream().map(Report::row).collect(Collectors.joining());
  }

  private String machine() {
    Runtime runtime = Runtime.getRuntime();
    return "%s, %d processors, %s %s, Java %s; `FaultSuite%s`"
        .formatted(
            LocalDate.now(ZoneOffset.UTC),
            runtime.availableProcessors(),
            System.getProperty("os.name"),
            System.getProperty("os.arch"),
            System.getProperty("java.version"),
            command.isEmpty() ? "" : " " + command);
  }

  static String row(Result result) {
    return "| %s | %s | %,d | %,d | %d | %d | %s | %,d ms | %s |%n"
        .formatted(
            result.scenario(),
            result.done(),
            result.requests(),
            result.acknowledged(),
            result.lost(),
            result.doubled(),
            result.troubles().isEmpty() ? "none" : cell(String.join("; ", result.troubles())),
            result.slowest().toMillis(),
            cell(result.remark()));
  }

  private static String cell(String text) {
    String line = text.replaceAll("\\s+", " ").replace("|", "\\|");
    return line.substring(0, Math.min(MAX_CELL_LENGTH, line.length()));
  }
}
