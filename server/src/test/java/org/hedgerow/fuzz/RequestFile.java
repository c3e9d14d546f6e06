package org.hedgerow.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a request is kept in a file: {@code sound} or {@code broken}, then its lines, an empty line,
 * and the body. Bytes that aren't printable ASCII are written as {@code \xNN}; lines that start
 * with {@code #} before the first are remarks.
 */
final class RequestFile {
  private static final Pattern ESCAPED = Pattern.compile("\\\\x([0-9a-f]{2})");
  private static final String SOUND = "sound";
  private static final String BROKEN = "broken";

  private RequestFile() {}

  static String write(HostileRequest request) {
    StringBuilder text = new StringBuilder(request.broken() ? BROKEN : SOUND).append('\n');
    request.lines().forEach(line -> text.append(escaped(line)).append('\n'));
    return text.append('\n').append(escaped(request.body())).append('\n').toString();
  }

  static HostileRequest read(String text) {
    List<String> all = text.lines().dropWhile(line -> line.startsWith("#")).toList();
    if (all.size() < 2 || !List.of(SOUND, BROKEN).contains(all.get(0))) {
      throw new IllegalArgumentException("This isn't a kept request: " + text);
    }
    int end = all.subList(1, all.size()).indexOf("");
    List<String> lines = new ArrayList<>();
    all.subList(1, end < 0 ? all.size() : end + 1).forEach(line -> lines.add(unescaped(line)));
    List<String> body = end < 0 ? List.of() : all.subList(end + 2, all.size());
    return new HostileRequest(lines, unescaped(String.join("", body)), all.get(0).equals(BROKEN));
  }

  private static String escaped(String bytes) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < bytes.length(); i++) {
      char each = bytes.charAt(i);
      boolean plain = each >= ' ' && each < 0x7f && each != '\\';
      text.append(plain ? String.valueOf(each) : "\\x%02x".formatted((int) each));
    }
    return text.toString();
  }

  private static String unescaped(String text) {
    return ESCAPED
        .matcher(text)
        .replaceAll(
            match ->
                Matcher.quoteReplacement(
                    String.valueOf((char) Integer.parseInt(match.group(1), 16))));
  }
}
