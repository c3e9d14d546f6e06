package org.hedgerow.fuzz;

import java.util.ArrayList;
import java.util.List;

/** Breaks HTTP itself: request lines, headers and the framing of bodies. */
final class Breaker {
  private static final List<String> VERSIONS =
      List.of(
          "",
          " ",
          " HTTP/0.9",
          " HTTP/1.0",
          " HTTP/1.2",
          " HTTP/2.0",
          " HTTP/9.9",
          " http/1.1",
          " HTTP/1.1 x",
          " SPDY/3");

  private static final List<String> HOSTS =
      List.of(
          "Host: localhost",
          "Host: ",
          "Host: a, b",
          "Host: localhost:99999",
          "Host: [::1",
          "Host: \u00ff",
          "Host : localhost",
          "X-None: 1");

  private static final List<String> LINES =
      List.of(
          "Content-Length: -1",
          "Content-Length: 5, 5",
          "Content-Length: 99999999999999999999",
          "Content-Length: 2000000000",
          "Content-Length: x",
          "Content-Length: 3",
          "Transfer-Encoding: chunked",
          "Transfer-Encoding: gzip, chunked",
          "Transfer-Encoding: nonsense",
          "Transfer-Encoding: chunked\r\nContent-Length: 4",
          " folded",
          "no colon",
          ": no name",
          "A b: c",
          "A\u0000: b",
          "A: \u0000",
          "A: b\rC: d",
          "A: b\nC: d",
          "\u00e9: x",
          "A: " + "x".repeat(9000),
          "X".repeat(9000) + ": a",
          "A: b\r\n".repeat(300) + "A: b",
          "Expect: 100-continue",
          "Connection: Upgrade\r\nUpgrade: h2c\r\nHTTP2-Settings: AAMAAABkAAQAAP__");

  private static final List<String> TARGETS =
      List.of(
          "",
          "*",
          "x",
          "http://",
          "http://[::1/",
          "http://localhost:1/api/v1/words",
          "//",
          "/" + "a".repeat(9000),
          "/\u0000",
          "/ /",
          "/\t",
          "/api/v1/words?" + "a=b&".repeat(2500),
          "/api/v1/../../x",
          "/api/v1/words#x",
          "\u00ff");

  private static final List<String> CHUNKS =
      List.of(
          "5\r\nhello\r\n0\r\n\r\n",
          "zz\r\n",
          "5\r\nhel",
          "-1\r\n",
          "ffffffffffffffffff\r\nx",
          "0\r\nTrailer: \u0000\r\n\r\n",
          "5;" + "x".repeat(9000) + "\r\nhello\r\n0\r\n\r\n");

  private final Dice dice;

  Breaker(Dice dice) {
    this.dice = dice;
  }

  HostileRequest broken(HostileRequest sound) {
    List<String> lines = new ArrayList<>(sound.lines());
    lines.add(1, dice.percent(70) ? "Host: localhost" : dice.any(HOSTS));
    String body = sound.body();
    switch (dice.below(5)) {
      case 0 -> lines.set(0, lines.get(0).replaceFirst(" HTTP/1\\.1$", dice.any(VERSIONS)));
      case 1 -> lines.set(0, sound.method() + " " + dice.any(TARGETS) + " HTTP/1.1");
      case 2 -> {
        lines.removeIf(line -> line.startsWith("Content-Length"));
        lines.add("Transfer-Encoding: chunked");
        body = dice.any(CHUNKS);
      }
      case 3 -> lines.set(0, new TextMutation(dice).mutated(lines.get(0)));
      default -> lines.add(dice.between(1, lines.size()), dice.any(LINES));
    }
    return new HostileRequest(lines, body, true);
  }
}
