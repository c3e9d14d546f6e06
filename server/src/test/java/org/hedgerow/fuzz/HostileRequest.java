package org.hedgerow.fuzz;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A request as it goes over the wire; every character stands for one byte (ISO 8859-1). A token is
 * named by its role in braces, {@code Authorization: Bearer {reviewer}}, so that the request can be
 * replayed against another server.
 *
 * @param lines the request line, then the headers but for {@code Host}; none ends with a line break
 * @param broken whether it breaks HTTP itself, so that a server may also close the connection
 */
record HostileRequest(List<String> lines, String body, boolean broken) {
  HostileRequest {
    lines = List.copyOf(lines);
  }

  String method() {
    return lines.get(0).split(" ", 2)[0];
  }

  /** The address that is asked, or nothing if the request line has none. */
  String target() {
    String[] parts = lines.get(0).split(" ", -1);
    return parts.length < 2 ? "" : parts[1];
  }

  boolean isToInterface() {
    return target().startsWith("/api/");
  }

  boolean isHead() {
    return method().equals("HEAD");
  }

  /** The value of a header; empty if it isn't sent. */
  String header(String name) {
    String prefix = name.toLowerCase(Locale.ROOT) + ":";
    return lines.stream()
        .skip(1)
        .filter(line -> line.toLowerCase(Locale.ROOT).startsWith(prefix))
        .map(line -> line.substring(prefix.length()).strip())
        .findFirst()
        .orElse("");
  }

  /** The same with its body's length said, unless a header says how the body is framed. */
  HostileRequest framed() {
    boolean told =
        body.isEmpty()
            || !header("Content-Length").isEmpty()
            || !header("Transfer-Encoding").isEmpty();
    return told ? this : with("Content-Length: " + body.length());
  }

  HostileRequest with(String line) {
    List<String> more = new ArrayList<>(lines);
    more.add(line);
    return new HostileRequest(more, body, broken);
  }

  /**
   * @param tokens by the names of roles
   */
  byte[] bytes(Map<String, String> tokens) {
    StringBuilder text = new StringBuilder(lines.get(0)).append("\r\n");
    if (!broken) {
      text.append("Host: localhost\r\n");
    }
    lines.stream().skip(1).forEach(line -> text.append(line).append("\r\n"));
    return filled(text.append("\r\n").append(body).toString(), tokens).getBytes(ISO_8859_1);
  }

  private static String filled(String text, Map<String, String> tokens) {
    String filled = text;
    for (Map.Entry<String, String> token : tokens.entrySet()) {
      filled = filled.replace("{" + token.getKey() + "}", token.getValue());
    }
    return filled;
  }
}
