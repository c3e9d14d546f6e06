package org.hedgerow.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Takes away from a request whatever isn't needed for its error, within bounds. */
final class Shrinker {
  private static final int MAX_TRIES = 300;

  private final Predicate<HostileRequest> fails;
  private int tries;

  Shrinker(Predicate<HostileRequest> fails) {
    this.fails = fails;
  }

  HostileRequest shrunk(HostileRequest request) {
    HostileRequest small = withoutLines(request);
    small = withoutQuery(small);
    return withoutBody(small);
  }

  private boolean stillFails(HostileRequest request) {
    return tries++ < MAX_TRIES && fails.test(request);
  }

  private HostileRequest withoutLines(HostileRequest request) {
    HostileRequest small = request;
    for (int index = request.lines().size() - 1; index > 0; index--) {
      List<String> lines = new ArrayList<>(small.lines());
      lines.remove(index);
      HostileRequest fewer = new HostileRequest(lines, small.body(), small.broken());
      small = stillFails(fewer) ? fewer : small;
    }
    return small;
  }

  private HostileRequest withoutQuery(HostileRequest request) {
    String[] parts = request.target().split("\\?", 2);
    if (parts.length < 2) {
      return request;
    }
    HostileRequest small = request;
    List<String> pairs = new ArrayList<>(List.of(parts[1].split("&", -1)));
    for (int index = pairs.size() - 1; index >= 0; index--) {
      List<String> fewer = new ArrayList<>(pairs);
      fewer.remove(index);
      String query = fewer.isEmpty() ? "" : "?" + String.join("&", fewer);
      HostileRequest smaller = withTarget(small, parts[0] + query);
      if (stillFails(smaller)) {
        small = smaller;
        pairs = fewer;
      }
    }
    return small;
  }

  private static HostileRequest withTarget(HostileRequest request, String target) {
    List<String> lines = new ArrayList<>(request.lines());
    lines.set(0, request.method() + " " + target + " HTTP/1.1");
    return new HostileRequest(lines, request.body(), request.broken());
  }

  /** Smaller and smaller pieces of the body are left out. */
  private HostileRequest withoutBody(HostileRequest request) {
    HostileRequest small = request;
    for (int piece = request.body().length() / 2; piece > 0; piece /= 2) {
      for (int start = 0; start + piece <= small.body().length(); ) {
        HostileRequest smaller = without(small, start, start + piece);
        if (stillFails(smaller)) {
          small = smaller;
        } else {
          start += piece;
        }
      }
    }
    return small;
  }

  private static HostileRequest without(HostileRequest request, int from, int to) {
    String body = request.body().substring(0, from) + request.body().substring(to);
    String told = "Content-Length: " + request.body().length();
    List<String> lines =
        request.lines().stream()
            .map(line -> line.equals(told) ? "Content-Length: " + body.length() : line)
            .toList();
    return new HostileRequest(lines, body, request.broken());
  }
}
