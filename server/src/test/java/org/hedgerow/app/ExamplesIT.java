package org.hedgerow.app;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.apidocs.ApiDocs;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Every example of the guide and the README, run in its order at a fresh demo. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExamplesIT {
  private static final Path README = Path.of("../README.md");

  /** Reading in what {@code export} writes takes a minute. */
  private static final Path SMALL_ARCHIVE =
      Path.of("src/test/resources/org/hedgerow/store/archive/archives/schema-6.zip");

  /** The only example that shows what a problem looks like. */
  private static final String MISTAKE = "phonogram=ao";

  private final Map<String, String> variables = new HashMap<>();
  private Path folder;
  private RunningJar demo;
  private String address;

  @BeforeAll
  void start(@TempDir Path temporary) throws Exception {
    folder = temporary;
    SeededData.copyInto(folder);
    demo = RunningJar.start(folder, "serve", "--port", "0", "--demo");
    address = demo.awaitReady();
    DemoSignIn people = new DemoSignIn(address, demo.out());
    variables.put("TOKEN", people.token("adaeze", "administrator"));
    variables.put("REVIEWER", people.token("tomasz", "reviewer"));
    Files.writeString(folder.resolve("words.csv"), "spelling,wanted-for\nfloatplane,oa 1\n");
    try (InputStream picture = ApiDocs.class.getResourceAsStream("/openapi/first-page.png")) {
      Files.write(folder.resolve("boat.png"), picture.readAllBytes());
    }
  }

  @AfterAll
  void stop() throws Exception {
    assertThat(demo.stop()).isZero();
  }

  @Test
  void thoseOfTheGuide() throws Exception {
    List<ShellExample> examples = ShellExample.in(new String(ApiDocs.guide(), UTF_8));
    assertThat(examples).hasSizeGreaterThan(30).allMatch(ShellExample::isRequest);
    for (ShellExample example : examples) {
      requireAnswer(example);
    }
  }

  @Test
  void thoseOfTheReadme() throws Exception {
    List<ShellExample> requests =
        ShellExample.in(Files.readString(README)).stream().filter(ShellExample::isRequest).toList();
    assertThat(requests).hasSizeGreaterThan(3);
    for (ShellExample example : requests) {
      requireAnswer(example);
    }
  }

  /** Those that serve are left out: they don't end, and {@link #start} runs one of them. */
  @Test
  void commandsOfTheReadme(@TempDir Path other) throws Exception {
    SeededData.copyInto(other);
    List<ShellExample> commands =
        ShellExample.in(Files.readString(README)).stream()
            .filter(ShellExample::endsByItself)
            .toList();
    assertThat(commands).hasSizeGreaterThan(5);
    for (ShellExample command : commands) {
      if (command.line().contains(" import ")) {
        Files.copy(SMALL_ARCHIVE, other.resolve("bank.zip"), REPLACE_EXISTING);
      }
      ShellExample.Outcome outcome = command.with(ShellExample.JAR, jar()).run(other, Map.of());
      assertThat(outcome.exit()).as(command.line() + "\n" + outcome.told()).isZero();
    }
    assertThat(other.resolve("new-data")).isNotEmptyDirectory();
  }

  private static String jar() {
    return "%s -Xmx512m -jar %s"
        .formatted(
            Path.of(System.getProperty("java.home"), "bin", "java"),
            System.getProperty("hedgerow.jar"));
  }

  private void requireAnswer(ShellExample example) throws IOException, InterruptedException {
    String host = address.substring("http://".length());
    ShellExample.Outcome outcome = example.with("localhost:8080", host).run(folder, variables);
    String expected = example.line().contains(MISTAKE) ? "400" : "20[01]";
    assertThat(outcome.exit()).as(example.line()).isZero();
    assertThat(outcome.status()).as(example.line() + "\n" + outcome.out()).matches(expected);
    assertThat(answer(example, outcome)).as(example.line()).isNotBlank();
    if (example.line().endsWith("/contributions'")) {
      variables.put("ID", new ObjectMapper().readTree(outcome.out()).required("id").asText());
    }
  }

  /** What came, also where the example writes it into a file. */
  private String answer(ShellExample example, ShellExample.Outcome outcome) throws IOException {
    String[] toFile = example.line().split("-o |> ", 2);
    return toFile.length == 1
        ? outcome.out()
        : new String(Files.readAllBytes(folder.resolve(toFile[1].split(" ", 2)[0])), UTF_8);
  }
}
