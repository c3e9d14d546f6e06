package org.hedgerow.web.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hedgerow.apidocs.ApiDocs;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.api.Test;

/** The table of routes for programs and the OpenAPI document list the same. */
class DocumentedRoutesTest {
  private static final Pattern LINE =
      Pattern.compile("(?m)^(  (/\\S+):|    (get|post|put|patch|delete):)$");

  @Test
  void everyRouteIsListedAndEveryListedRouteIsThere() {
    try (PeopleServer server = PeopleServer.start()) {
      Set<String> there =
          server.routes().stream()
              .filter(route -> route.path().startsWith("/api/v1/"))
              .filter(route -> !Set.of("HEAD", "OPTIONS").contains(route.method()))
              .map(route -> route.method() + " " + route.path())
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(listed()).isEqualTo(there).hasSizeGreaterThan(20);
    }
  }

  private static Set<String> listed() {
    Set<String> listed = new TreeSet<>();
    Matcher lines = LINE.matcher(new String(ApiDocs.openApi(), UTF_8));
    String path = "";
    while (lines.find()) {
      if (lines.group(2) != null) {
        path = lines.group(2);
      } else if (path.startsWith("/api/v1/")) {
        listed.add(lines.group(3).toUpperCase(Locale.ROOT) + " " + path);
      }
    }
    return listed;
  }
}
