package org.hedgerow;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hedgerow.apidocs.ApiDocs;
import org.junit.jupiter.api.Test;

/** The table in security.md names what is there, and leaves nothing out. */
class SecurityTableTest {
  /**
   * How many requirements of level 1 or 2 each section has; within these sections they come before
   * those of level 3. OWASP ASVS 5.0.0, github.com/OWASP/ASVS, 5.0/docs_en, the file
   * OWASP_Application_Security_Verification_Standard_5.0.0_en.csv.
   */
  private static final Map<String, Integer> REQUIREMENTS =
      Map.ofEntries(
          Map.entry("1.1", 2),
          Map.entry("1.2", 9),
          Map.entry("1.3", 11),
          Map.entry("1.4", 3),
          Map.entry("1.5", 2),
          Map.entry("2.1", 3),
          Map.entry("2.2", 3),
          Map.entry("2.3", 4),
          Map.entry("2.4", 1),
          Map.entry("3.3", 4),
          Map.entry("3.4", 6),
          Map.entry("3.5", 5),
          Map.entry("3.7", 2),
          Map.entry("6.1", 3),
          Map.entry("6.2", 11),
          Map.entry("6.3", 4),
          Map.entry("6.4", 4),
          Map.entry("6.5", 5),
          Map.entry("6.6", 3),
          Map.entry("6.8", 4),
          Map.entry("7.1", 3),
          Map.entry("7.2", 4),
          Map.entry("7.3", 2),
          Map.entry("7.4", 5),
          Map.entry("7.5", 2),
          Map.entry("7.6", 2),
          Map.entry("8.1", 2),
          Map.entry("8.2", 3),
          Map.entry("8.3", 1),
          Map.entry("8.4", 1));

  private static final Pattern ROW = Pattern.compile("(?m)^\\| ([0-9.]+) \\|(.*)\\|$");
  private static final Pattern NAME = Pattern.compile("`([A-Z]\\w+)(?:#(\\w+))?`");

  private final Map<String, String> sources = sources(Path.of("src/main/java"));
  private final Map<String, String> tests = sources(Path.of("src/test/java"));

  private static Map<String, String> sources(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> !file.endsWith("package-info.java"))
          .collect(
              Collectors.toMap(
                  file -> file.getFileName().toString().replace(".java", ""),
                  SecurityTableTest::read,
                  (one, other) -> one + other));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static List<MatchResult> rows() {
    return ROW.matcher(new String(ApiDocs.security(), UTF_8)).results().toList();
  }

  @Test
  void leavesNoRequirementOut() {
    List<String> wanted = new ArrayList<>();
    REQUIREMENTS.forEach(
        (section, count) ->
            IntStream.rangeClosed(1, count).forEach(number -> wanted.add(section + "." + number)));
    assertThat(rows().stream().map(row -> row.group(1)))
        .doesNotHaveDuplicates()
        .containsAll(wanted);
  }

  @Test
  void everyAnswerIsOneOfFour() {
    assertThat(rows())
        .allSatisfy(
            row ->
                assertThat(row.group(2).split("\\|", -1)[1].strip())
                    .matches("(?s)(met|partly|not met|n/a).*"));
  }

  @Test
  void everyClassAndEveryTestIsThere() {
    assertThat(rows())
        .hasSizeGreaterThan(100)
        .allSatisfy(
            row ->
                assertThat(NAME.matcher(whereAndTest(row)).results())
                    .allSatisfy(this::requireThere));
  }

  private static String whereAndTest(MatchResult row) {
    String[] cells = row.group(2).split("\\|", -1);
    assertThat(cells).as(row.group()).hasSize(4);
    return cells[2] + cells[3];
  }

  private void requireThere(MatchResult name) {
    String method = name.group(2);
    if (method == null) {
      assertThat(sources).containsKey(name.group(1));
    } else {
      assertThat(tests).containsKey(name.group(1));
      assertThat(tests.get(name.group(1))).contains("void " + method + "(");
    }
  }

  /** What is met is shown, unless there is nothing that could be tried. */
  @Test
  void whatIsMetHasMostlyATest() {
    List<String> untested =
        rows().stream()
            .filter(row -> row.group(2).contains("| met"))
            .filter(row -> !row.group(2).contains("#"))
            .map(row -> row.group(1))
            .toList();
    assertThat(untested).containsExactly("1.4.1", "6.2.10", "6.4.2", "7.1.2");
  }
}
