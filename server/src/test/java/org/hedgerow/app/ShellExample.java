package org.hedgerow.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;

/**
 * A command of a document's shell blocks.
 *
 * @param line the command, in one line
 */
record ShellExample(String line) {
  /** How the program is started. */
  static final String JAR = "java -jar server/target/hedgerow.jar";

  private static final Pattern BLOCK = Pattern.compile("(?ms)^```sh\\n(.*?)^```");

  /** Makes curl say the status last, on standard error. */
  private static final String CURLRC =
      """
      silent
      show-error
      max-time = 30
      write-out = "%{stderr}\\n%{http_code}"
      """;

  /**
   * What a command gave.
   *
   * @param told its standard error; of a request the HTTP status is its last line
   */
  record Outcome(int exit, String out, String told) {
    String status() {
      return told.substring(told.lastIndexOf('\n') + 1).strip();
    }
  }

  /** The commands of a document in Markdown, in their order. */
  static List<ShellExample> in(String markdown) {
    return BLOCK
        .matcher(markdown)
        .results()
        .flatMap(block -> block.group(1).replaceAll("\\\\\\n\\s*", "").lines())
        .map(ShellExample::new)
        .toList();
  }

  boolean isRequest() {
    return line.startsWith("curl ");
  }

  /** Whether it runs the program, and not as a server. */
  boolean endsByItself() {
    return line.startsWith(JAR) && !line.startsWith(JAR + " serve");
  }

  ShellExample with(String shown, String actual) {
    return new ShellExample(line.replace(shown, actual));
  }

  /** Runs it in a folder, as somebody would type it. */
  Outcome run(Path folder, Map<String, String> variables) throws IOException, InterruptedException {
    Files.writeString(folder.resolve(".curlrc"), CURLRC);
    Path out = folder.resolve("out.txt");
    Path errors = folder.resolve("errors.txt");
    ProcessBuilder shell =
        new ProcessBuilder("bash", "-c", line)
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(errors.toFile());
    shell.environment().putAll(variables);
    shell.environment().put("CURL_HOME", folder.toString());
    Process process = shell.start();
    if (!process.waitFor(1, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new AssertionError("It doesn't end: " + line);
    }
    return new Outcome(process.exitValue(), Files.readString(out), Files.readString(errors));
  }
}
