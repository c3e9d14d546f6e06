package org.hedgerow.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * One start of the embedded PostgreSQL. The library waits out its whole time even where PostgreSQL
 * gave up at once, so its log is watched meanwhile.
 */
final class ServerStart {
  /** Recovery after a crash can take a while; a failed start is noticed at once. */
  private static final Duration WAIT = Duration.ofMinutes(5);

  private static final long POLL_MILLISECONDS = 50;
  private static final List<String> GAVE_UP =
      List.of("pg_ctl: could not start server", "pg_ctl: cannot");
  private static final List<String> TELLING =
      List.of("FATAL:", "PANIC:", "error:", "cannot", "could not");

  /**
   * People keep real data here, so it is written through to the disk; the rest is sized for a small
   * machine that it shares with the server.
   */
  private static final Map<String, String> SETTINGS =
      Map.ofEntries(
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
  private static final Map<String, String> LOCALE =
      Map.of("locale-provider", "builtin", "builtin-locale", "C.UTF-8", "locale", "C");

  private final DataFolder folder;

  ServerStart(DataFolder folder) {
    this.folder = folder;
  }

  EmbeddedPostgres run() {
    CompletableFuture<EmbeddedPostgres> starting = new CompletableFuture<>();
    Thread thread = new Thread(() -> start(starting), "start-of-postgresql");
    thread.setDaemon(true);
    thread.start();
    return await(starting, thread);
  }

  // The library throws an Error where it can't unpack the programs.
  @SuppressWarnings("CatchingUnchecked")
  private void start(CompletableFuture<EmbeddedPostgres> starting) {
    try {
      starting.complete(builder().start());
    } catch (IOException | RuntimeException | ExceptionInInitializerError failure) {
      starting.completeExceptionally(failure);
    }
  }

  private EmbeddedPostgres.Builder builder() {
    ProcessBuilder.Redirect log = ProcessBuilder.Redirect.appendTo(folder.startLog().toFile());
    EmbeddedPostgres.Builder builder =
        EmbeddedPostgres.builder()
            .setDataDirectory(folder.cluster())
            .setCleanDataDirectory(false)
            .setOverrideWorkingDirectory(folder.engine().toFile())
            .setRegisterShutdownHook(false)
            .setPGStartupWait(WAIT)
            .setOutputRedirector(log)
            .setErrorRedirector(log);
    SETTINGS.forEach(builder::setServerConfig);
    LOCALE.forEach(builder::setLocaleConfig);
    return builder;
  }

  private EmbeddedPostgres await(CompletableFuture<EmbeddedPostgres> starting, Thread thread) {
    while (true) {
      try {
        return starting.get(POLL_MILLISECONDS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException stillStarting) {
        if (gaveUp()) {
          thread.interrupt();
          throw failed(stillStarting);
        }
      } catch (ExecutionException failure) {
        throw failed(failure);
      } catch (InterruptedException interruption) {
        Thread.currentThread().interrupt();
        throw failed(interruption);
      }
    }
  }

  private boolean gaveUp() {
    return log().stream().anyMatch(line -> GAVE_UP.stream().anyMatch(line::startsWith));
  }

  private DatabaseUnavailableException failed(Exception cause) {
    return new DatabaseUnavailableException(
        "The embedded database doesn't start: %s (more in %s)."
            .formatted(reason(cause), folder.startLog()),
        cause);
  }

  private String reason(Exception cause) {
    return log().stream()
        .filter(line -> TELLING.stream().anyMatch(line::contains))
        .findFirst()
        .orElse(String.valueOf(cause.getMessage()));
  }

  private List<String> log() {
    try {
      return Files.readString(folder.startLog(), StandardCharsets.ISO_8859_1).lines().toList();
    } catch (IOException noneYet) {
      return List.of();
    }
  }
}
