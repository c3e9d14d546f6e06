package org.hedgerow.web.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import org.hedgerow.web.problems.ProblemType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages of documentation as they lie in the jar. */
class ProblemPageTest {

  @ParameterizedTest
  @EnumSource
  void explainsEveryProblem(ProblemType type) throws IOException {
    assertThat(page("problems.html"))
        .contains("<h2 id=\"%s\">%s</h2>".formatted(type.slug(), type.title().replace("'", "’")))
        .contains("<code>%s</code>, status %d".formatted(type.slug(), type.status()));
  }

  @Test
  void explainsNoOther() throws IOException {
    assertThat(page("problems.html").split("<h2 ", -1)).hasSize(ProblemType.values().length + 1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"docs.html", "problems.html", "start.js", "docs.css"})
  void loadsNothingFromElsewhere(String name) throws IOException {
    assertThat(page(name))
        .doesNotContainPattern("(src|url|import|link[^>]*href)[=(: ]*[\"']?(https?:)?//");
  }

  private static String page(String name) throws IOException {
    try (InputStream stream = ProblemPageTest.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(stream).readAllBytes(), UTF_8);
    }
  }
}
