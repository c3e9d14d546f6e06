package org.hedgerow.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/**
 * What can be said on the command line, in the environment and in the settings file, and which of
 * them counts.
 */
class CommandLineTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter errors = new StringWriter();

  @TempDir private Path folder;

  private int run(Map<String, String> environment, String... arguments) {
    return Hedgerow.run(
        arguments, environment, new PrintWriter(out, true), new PrintWriter(errors, true));
  }

  @Test
  void printsItsVersion() {
    assertThat(run(Map.of(), "version")).isZero();
    assertThat(out.toString()).matches("Hedgerow \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?\\R");
  }

  @Test
  void namesEveryCommandInItsHelp() {
    assertThat(run(Map.of(), "--help")).isZero();
    assertThat(out.toString()).contains("serve", "migrate", "seed", "list", "check", "version");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ''                   | Say which command to run
          sing                 | sing
          serve --prot 1       | --prot
          serve --port         | --port
          serve --port eighty  | is not a whole number
          serve --port 70000   | between 0 and 65535, not 70000
          serve extra          | extra
          list                 | PHONOGRAM
          list oa --limit x    | is not a whole number
          list oa --limit 0    | --limit must be 1 or more, not 0
          check                | WORD
          check naïve          | the letter
          check cat dog2       | a digit
          check cat --value 2  | --phonogram
          serve --config       | --config
          serve --config none  | there is no such file
          """)
  void refusesWrongUsageInOneLine(String arguments, String message) {
    String[] words = arguments.isEmpty() ? new String[0] : arguments.split(" ");
    assertThat(run(Map.of(), words)).isEqualTo(2);
    assertThat(errors.toString().lines().findFirst().orElse("")).contains(message);
    assertThat(errors.toString()).doesNotContain("Exception");
  }

  @Test
  void namesTheVariableThatHoldsAWrongValue() {
    assertThat(run(Map.of("HEDGEROW_PORT", "eighty"), "serve")).isEqualTo(2);
    assertThat(errors.toString()).contains("'eighty'").contains("HEDGEROW_PORT");
  }

  @Test
  void refusesASettingThatIsNone() throws IOException {
    assertThat(run(Map.of(), "serve", "--config", settings("prot=1"))).isEqualTo(2);
    assertThat(errors.toString()).contains("prot").contains("port").hasLineCount(1);
  }

  @Test
  void saysInOneLineThatAPortIsInUse() throws IOException {
    try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      String port = Integer.toString(other.getLocalPort());
      assertThat(run(Map.of(), "serve", "--data", folder + "/data", "--port", port)).isEqualTo(1);
      assertThat(errors.toString()).contains("Port " + port).hasLineCount(1);
      assertThat(folder.resolve("data")).doesNotExist();
    }
  }

  @Test
  void refusesTwoPasswords() throws IOException {
    String url = "jdbc:postgresql://127.0.0.1:1/x";
    assertThat(
            run(
                Map.of("HEDGEROW_DATABASE_PASSWORD", "hawthorn"),
                "migrate",
                "--database-url",
                url,
                "--database-password-file",
                settings("blackthorn")))
        .isEqualTo(1);
    assertThat(errors.toString()).contains("two passwords").doesNotContain("thorn\n");
  }

  @Test
  void prefersTheCommandLineToTheEnvironmentToTheFile() throws Exception {
    String file = settings("port=1\nhost=file\ndata=file");
    Map<String, String> environment = Map.of("HEDGEROW_PORT", "2", "HEDGEROW_HOST", "environment");
    assertThat(value("--host", environment, "--config", file, "--host", "line")).isEqualTo("line");
    assertThat(value("--port", environment, "--config", file)).isEqualTo(2);
    assertThat(value("--data", environment, "--config=" + file)).isEqualTo(Path.of("file"));
    assertThat(value("--port", Map.of("HEDGEROW_CONFIG", file))).isEqualTo(1);
    assertThat(value("--port", Map.of())).isEqualTo(8080);
    assertThat(value("--host", Map.of())).isEqualTo("127.0.0.1");
  }

  @Test
  void takesAnEmptyVariableForNone() throws Exception {
    assertThat(value("--port", Map.of("HEDGEROW_PORT", "", "HEDGEROW_CONFIG", ""))).isEqualTo(8080);
  }

  @Test
  void setsSwitchesInTheEnvironmentToo() throws Exception {
    assertThat(value("--demo", Map.of("HEDGEROW_DEMO", "true"))).isEqualTo(true);
    assertThat(value("--demo", Map.of())).isEqualTo(false);
  }

  private static Object value(String option, Map<String, String> environment, String... arguments)
      throws UnusableSettingsException {
    CommandLine commands = new CommandLine(new RootCommand());
    commands.setDefaultValueProvider(Settings.read(arguments, environment, commands));
    String[] line = new String[arguments.length + 1];
    line[0] = "serve";
    System.arraycopy(arguments, 0, line, 1, arguments.length);
    CommandLine serve = commands.parseArgs(line).subcommand().commandSpec().commandLine();
    return serve.getCommandSpec().findOption(option).getValue();
  }

  private String settings(String text) throws IOException {
    return Files.writeString(folder.resolve("settings.properties"), text).toString();
  }
}
