package org.hedgerow.apidocs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ApiDocsTest {
  private static final Pattern CURL = Pattern.compile("^curl .*$", Pattern.MULTILINE);
  private static final Pattern PATH = Pattern.compile("localhost:8080(/[\\w$./-]*\\w)");

  @Test
  void givesTheOpenApiDocument() {
    assertThat(new String(ApiDocs.openApi(), UTF_8)).startsWith("openapi: 3.1").contains("ʊ");
  }

  @Test
  void givesTheGuide() {
    assertThat(new String(ApiDocs.guide(), UTF_8)).startsWith("# ");
  }

  /** A guide that asks for what isn't there would mislead. */
  @Test
  void theGuideAsksOnlyForWhatTheDocumentHolds() {
    String document = new String(ApiDocs.openApi(), UTF_8);
    String guide = new String(ApiDocs.guide(), UTF_8);
    List<String> paths = PATH.matcher(guide).results().map(match -> match.group(1)).toList();
    assertThat(paths)
        .hasSizeGreaterThan(5)
        .allSatisfy(path -> assertThat(document).containsPattern(line(path)));
    assertThat(CURL.matcher(guide).results()).hasSizeGreaterThan(5);
  }

  /** A number or a variable in a path stands for any. */
  private static String line(String asked) {
    String path = asked.replaceAll("/([0-9]+|\\$[A-Z]+)(?=/)", "/{id}");
    String parent = path.substring(0, path.lastIndexOf('/'));
    return "(?m)^  (" + Pattern.quote(path) + "|" + Pattern.quote(parent) + "/\\{[a-z]+}):$";
  }
}
