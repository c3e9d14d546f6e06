package org.hedgerow.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The built program, run as a process of its own, as a person would. Closing it kills it if it
 * still runs.
 */
public final class RunningJar implements AutoCloseable {
  private static final Pattern READY = Pattern.compile("ready at (http://\\S+?)/?\\s");
  private static final Duration PATIENCE = Duration.ofMinutes(2);

  /** What runs for seconds isn't worth compiling well: that takes longer than it saves. */
  private static final List<String> FOR_SECONDS =
      List.of("-Xmx512m", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");

  private final HttpClient client = HttpClient.newHttpClient();
  private final Process process;
  private final Path out;
  private final Path errors;

  private RunningJar(Process process, Path out, Path errors) {
    this.process = process;
    this.out = out;
    this.errors = errors;
  }

  /**
   * Starts it, with 512 MB of heap, for a few seconds.
   *
   * @param folder where to run it; its output is kept there too
   */
  public static RunningJar start(Path folder, String... arguments) {
    return startWith(folder, FOR_SECONDS, arguments);
  }

  /** As {@link #start}, with options for the virtual machine instead. */
  public static RunningJar startWith(
      Path folder, List<String> machineOptions, String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(machineOptions);
    command.addAll(List.of("-jar", System.getProperty("hedgerow.jar")));
    command.addAll(List.of(arguments));
    try {
      Path out = Files.createTempFile(folder, "out", ".txt");
      Path errors = Files.createTempFile(folder, "errors", ".txt");
      Process process =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectOutput(out.toFile())
              .redirectError(errors.toFile())
              .start();
      return new RunningJar(process, out, errors);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Waits until it says that it is ready, and gives its address, without a slash at the end. */
  public String awaitReady() throws InterruptedException {
    return await(READY).group(1);
  }

  /** Waits until it prints a text. */
  void awaitOut(String text) throws InterruptedException {
    await(Pattern.compile(Pattern.quote(text)));
  }

  private MatchResult await(Pattern pattern) throws InterruptedException {
    long deadline = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < deadline && process.isAlive()) {
      Matcher matcher = pattern.matcher(out());
      if (matcher.find()) {
        return matcher.toMatchResult();
      }
      Thread.sleep(50);
    }
    throw new AssertionError("It doesn't print " + pattern + ".\n" + out() + errors());
  }

  /** Waits until the process is ready and asks it. */
  public HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return client.send(
        HttpRequest.newBuilder(URI.create(awaitReady() + path)).build(), BodyHandlers.ofString());
  }

  /** Sends SIGTERM, as service managers do, and gives the exit code. */
  public int stop() throws InterruptedException {
    process.destroy();
    return awaitExit();
  }

  /** Sends SIGKILL. */
  public void kill() throws InterruptedException {
    process.destroyForcibly().waitFor();
  }

  public int awaitExit() throws InterruptedException {
    if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
      throw new AssertionError("It doesn't end.\n" + out() + errors());
    }
    return process.exitValue();
  }

  public long pid() {
    return process.pid();
  }

  public String out() {
    return read(out);
  }

  public String errors() {
    return read(errors);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
