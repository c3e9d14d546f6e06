package org.hedgerow.store.embedded;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * PostgreSQL's data directory and the programs that work on it. Each of them ends by itself; the
 * server that {@code pg_ctl} starts goes on in the background.
 */
final class Cluster {
  private static final Logger LOG = LoggerFactory.getLogger(Cluster.class);

  /** Recovery after a crash can take a while. */
  private static final Duration START = Duration.ofMinutes(5);

  private static final List<String> CONTROL = List.of("pg_ctl");
  private static final Duration STOP = Duration.ofMinutes(1);
  private static final Duration SILENCE = Duration.ofSeconds(10);
  private static final Duration LIMIT = START.plusSeconds(10);

  /**
   * People keep real data here, so it is written through to the disk; the rest is sized for a small
   * machine that it shares with the server.
   */
  private static final Map<String, String> SETTINGS =
      Map.ofEntries(
          Map.entry("timezone", "UTC"),
          Map.entry("fsync", "on"),
          Map.entry("synchronous_commit", "on"),
          Map.entry("full_page_writes", "on"),
          Map.entry("listen_addresses", "localhost"),
          Map.entry("unix_socket_directories", ""),
          Map.entry("max_connections", "40"),
          Map.entry("shared_buffers", "64MB"),
          Map.entry("work_mem", "8MB"),
          Map.entry("maintenance_work_mem", "64MB"),
          Map.entry("effective_cache_size", "512MB"),
          Map.entry("max_parallel_workers_per_gather", "0"),
          Map.entry("io_method", "sync"),
          Map.entry("jit", "off"),
          Map.entry("logging_collector", "on"),
          Map.entry("log_filename", "postgresql-%u.log"), // a file for each day of the week
          Map.entry("log_rotation_age", "1d"),
          Map.entry("log_truncate_on_rotation", "on"));

  /** The same order of letters on every machine, whatever its own language. */
  private static final List<String> LOCALE =
      List.of("--locale-provider=builtin", "--builtin-locale=C.UTF-8", "--locale=C");

  private final Path directory;
  private final Path log;
  private final PostgresBinaries engine;

  Cluster(DataFolder folder, PostgresBinaries engine) {
    this.directory = folder.cluster();
    this.log = folder.startLog();
    this.engine = engine;
  }

  /** Whether there is nothing in the directory yet. */
  boolean isNew() {
    try (Stream<Path> files = Files.list(directory)) {
      return files.findAny().isEmpty();
    } catch (IOException notThere) {
      return !Files.exists(directory);
    }
  }

  /**
   * Makes a new cluster that lets nobody in without a password.
   *
   * @param passwordFile holds that of {@link EmbeddedServer#USER}
   */
  void initialise(Path passwordFile) {
    List<String> arguments =
        new ArrayList<>(
            List.of("--auth=scram-sha-256", "--pwfile=" + passwordFile, "-E", "UTF-8", "-U"));
    arguments.add(EmbeddedServer.USER);
    arguments.addAll(LOCALE);
    run(List.of("initdb"), arguments, "");
  }

  /** Starts the server and waits until it takes connections. */
  void start(int port) {
    run(CONTROL, List.of("start", "-w", "-t", seconds(START), "-o", options(port)), "");
  }

  /** Stops the server, closing its connections. */
  void stop() {
    run(CONTROL, List.of("stop", "-w", "-t", seconds(STOP), "-m", "fast"), "");
  }

  /** Executes a statement of one line in single-user mode, which needs no password. */
  void execute(String statement) {
    run(
        List.of("postgres", "--single"),
        List.of("-c", "log_min_error_statement=panic", "postgres"),
        statement + "\n");
  }

  private static String seconds(Duration duration) {
    return Long.toString(duration.toSeconds());
  }

  private static String options(int port) {
    StringBuilder options = new StringBuilder("-p " + port);
    SETTINGS.forEach(
        (name, value) -> options.append(" -c ").append(name).append('=').append(value));
    return options.toString();
  }

  private void run(List<String> program, List<String> arguments, String input) {
    List<String> command = engine.command(program.get(0));
    command.addAll(program.subList(1, program.size()));
    command.addAll(List.of("-D", directory.toString()));
    command.addAll(arguments);
    try {
      Files.deleteIfExists(log);
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()))
              .start();
      tell(process, input);
      if (exitCode(process, program.get(0)) != 0) {
        throw failure();
      }
    } catch (IOException problem) {
      throw new DatabaseUnavailableException(
          new StartFailure(engine, log).message(String.valueOf(problem.getMessage())), problem);
    }
  }

  private static void tell(Process process, String input) throws IOException {
    try (OutputStream in = process.getOutputStream()) {
      if (!input.isEmpty()) {
        in.write(input.getBytes(StandardCharsets.US_ASCII));
      }
    }
  }

  private int exitCode(Process process, String program) {
    try {
      if (!process.waitFor(SILENCE.toSeconds(), TimeUnit.SECONDS)) {
        LOG.info("PostgreSQL's {} takes longer than usual, as after a crash; waiting.", program);
      }
      if (!process.waitFor(LIMIT.toSeconds(), TimeUnit.SECONDS)) {
        process.destroy();
        throw failure();
      }
      return process.exitValue();
    } catch (InterruptedException interruption) {
      process.destroy();
      Thread.currentThread().interrupt();
      throw failure();
    }
  }

  private DatabaseUnavailableException failure() {
    return new DatabaseUnavailableException(new StartFailure(engine, log).message());
  }
}
