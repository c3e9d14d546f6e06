package org.hedgerow.store.embedded;

import io.zonky.test.db.postgres.util.LinuxUtils;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The PostgreSQL that a killed process left running on a data folder. It must be stopped before
 * another can start there; only the holder of the folder's lock may do so.
 */
final class OrphanedServer {
  private static final Logger LOG = LoggerFactory.getLogger(OrphanedServer.class);
  private static final int STOP_SECONDS = 60;
  private static final long POLL_MILLISECONDS = 20;

  private final DataFolder folder;
  private final ProcessHandle process;

  private OrphanedServer(DataFolder folder, ProcessHandle process) {
    this.folder = folder;
    this.process = process;
  }

  /** Stops what still runs on the folder, and clears away the mark of what no longer does. */
  static void stopOn(DataFolder folder) {
    Optional<ProcessHandle> process = marked(folder);
    if (process.isEmpty()) {
      return; // PostgreSQL clears a mark whose process is gone.
    }
    if (isPostgres(process.get())) {
      new OrphanedServer(folder, process.get()).stop();
    } else {
      clearMark(folder);
    }
  }

  /** The PostgreSQL that runs on the folder. */
  static Optional<ProcessHandle> process(DataFolder folder) {
    return marked(folder).filter(OrphanedServer::isPostgres);
  }

  private static Optional<ProcessHandle> marked(DataFolder folder) {
    return PostmasterFile.read(folder.cluster())
        .flatMap(postmaster -> ProcessHandle.of(postmaster.process()));
  }

  /**
   * After a restart of the machine the number may belong to any program, which must be left alone.
   */
  private static boolean isPostgres(ProcessHandle process) {
    return process
            .info()
            .command()
            .map(command -> Path.of(command).getFileName().toString().startsWith("postgres"))
            .orElse(true)
        && !isZombie(process);
  }

  /** On Linux; where nothing reaps orphans, as in many containers, a killed server stays one. */
  private static boolean isZombie(ProcessHandle process) {
    try {
      return Files.readString(Path.of("/proc/%d/stat".formatted(process.pid()))).contains(") Z ");
    } catch (IOException otherSystemOrGone) {
      return false;
    }
  }

  private static void clearMark(DataFolder folder) {
    try {
      Files.deleteIfExists(PostmasterFile.in(folder.cluster()));
    } catch (IOException problem) {
      throw DataFolder.unusable(folder.root(), problem);
    }
  }

  private void stop() {
    LOG.info("Stopping the database that an earlier run left behind (process {}).", process.pid());
    if (!stopsWhenTold()) {
      process.destroy();
    }
    if (!ends()) {
      throw new DatabaseUnavailableException(
          "A database that an earlier run left behind, process %d, doesn't stop. End it by hand."
              .formatted(process.pid()));
    }
  }

  private boolean stopsWhenTold() {
    Optional<Path> control = control();
    return control.isPresent() && run(command(control.get()));
  }

  private Optional<Path> control() {
    try (var unpacked = Files.list(folder.engine())) {
      return unpacked
          .flatMap(
              version ->
                  List.of("pg_ctl", "pg_ctl.exe").stream().map(version.resolve("bin")::resolve))
          .filter(Files::isExecutable)
          .findFirst();
    } catch (IOException noEngine) {
      return Optional.empty();
    }
  }

  private List<String> command(Path control) {
    List<String> command = new ArrayList<>();
    if (LinuxUtils.isUnshareAvailable()) { // PostgreSQL's programs refuse to run as root
      command.addAll(List.of("unshare", "-U"));
    }
    command.addAll(
        List.of(control.toString(), "stop", "-D", folder.cluster().toString(), "-m", "fast", "-w"));
    command.addAll(List.of("-t", Integer.toString(STOP_SECONDS)));
    return command;
  }

  private boolean run(List<String> command) {
    try {
      Process stopping =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.appendTo(folder.startLog().toFile()))
              .start();
      return stopping.waitFor(STOP_SECONDS + 10L, TimeUnit.SECONDS) && stopping.exitValue() == 0;
    } catch (IOException problem) {
      return false;
    } catch (InterruptedException interruption) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private boolean ends() {
    try {
      long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(STOP_SECONDS);
      while (process.isAlive() && !isZombie(process) && System.nanoTime() < deadline) {
        Thread.sleep(POLL_MILLISECONDS);
      }
      return !process.isAlive() || isZombie(process);
    } catch (InterruptedException interruption) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
