package org.hedgerow.web.review;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * What somebody pasted: a table whose first row names its columns, or only words, one a line.
 *
 * @param accent of words that come without; empty for the usual one
 * @param wantedFor the label of a phonogram value, or an empty text
 */
record PastedWords(String text, String accent, String wantedFor) {

  private boolean isTable() {
    String first = text.lines().findFirst().orElse("").toLowerCase(Locale.ROOT);
    return first.contains("spelling") || first.matches(".*[,;\t].*");
  }

  /** As a table. */
  byte[] csv() {
    return (isTable() ? text : table()).getBytes(StandardCharsets.UTF_8);
  }

  private String table() {
    StringBuilder table = new StringBuilder("spelling,accent,wanted-for\n");
    text.lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty())
        .forEach(line -> table.append(cell(line)).append(',').append(rest()));
    return table.toString();
  }

  private String rest() {
    return cell(accent) + "," + cell(wantedFor) + "\n";
  }

  private static String cell(String text) {
    return "\"" + text.replace("\"", "\"\"") + "\"";
  }
}
