package org.hedgerow.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hedgerow.app.RunningJar;

/**
 * The built program as a server that is started again and again on the same port, and its
 * PostgreSQL.
 */
final class ServerProcess implements AutoCloseable {
  private static final String DATA = "data";
  private static final int HEAP = 512;

  private final Path folder;
  private final Path data;
  private final int port = freePort();
  private final int heap;
  private final List<String> options;
  private RunningJar jar;

  private ServerProcess(Path folder, Path data, int heap, List<String> options) {
    this.folder = folder;
    this.data = data;
    this.heap = heap;
    this.options = options;
    this.jar = run();
  }

  /**
   * @param folder to run in; its data are in {@code data} there
   * @param options for {@code serve}, beside the port
   */
  static ServerProcess start(Path folder, String... options) {
    return new ServerProcess(folder, folder.resolve(DATA), HEAP, List.of(options));
  }

  /** With its data elsewhere. */
  static ServerProcess startWithData(Path folder, Path data) {
    return new ServerProcess(folder, data, HEAP, List.of("--data", data.toString()));
  }

  /**
   * @param heap in megabytes
   */
  static ServerProcess startWithHeap(Path folder, int heap) {
    return new ServerProcess(folder, folder.resolve(DATA), heap, List.of());
  }

  private RunningJar run() {
    List<String> arguments = new ArrayList<>(List.of("serve", "--port", String.valueOf(port)));
    arguments.addAll(options);
    return RunningJar.startWith(
        folder, List.of("-Xmx" + heap + "m"), arguments.toArray(String[]::new));
  }

  private static int freePort() {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  String address() {
    return "http://127.0.0.1:" + port;
  }

  int port() {
    return port;
  }

  Path data() {
    return data;
  }

  ServerProcess awaitReady() throws InterruptedException {
    jar.awaitReady();
    return this;
  }

  /** Sends SIGKILL to the server alone; its PostgreSQL stays behind. */
  void kill() throws InterruptedException {
    jar.kill();
  }

  /** Ends it as service managers do. */
  void stop() throws InterruptedException {
    jar.stop();
  }

  void startAgain() {
    jar = run();
  }

  boolean isAlive() {
    return ProcessHandle.of(jar.pid()).isPresent();
  }

  long pid() {
    return jar.pid();
  }

  String output() {
    return jar.out() + jar.errors();
  }

  /** PostgreSQL's first process, if it runs. */
  Optional<ProcessHandle> postmaster() {
    try (Stream<String> lines = Files.lines(data.resolve("postgresql/postmaster.pid"))) {
      return lines.findFirst().map(String::strip).map(Long::valueOf).flatMap(ProcessHandle::of);
    } catch (IOException none) {
      return Optional.empty();
    }
  }

  /** Stops or continues PostgreSQL with all its processes: SIGSTOP, SIGCONT. */
  void signalDatabase(String signal) throws IOException, InterruptedException {
    ProcessHandle first = postmaster().orElseThrow();
    List<String> command = new ArrayList<>(List.of("kill", "-" + signal));
    Stream.concat(Stream.of(first), first.descendants())
        .forEach(process -> command.add(String.valueOf(process.pid())));
    new ProcessBuilder(command).inheritIO().start().waitFor();
  }

  @Override
  public void close() {
    jar.close();
    postmaster().ifPresent(ProcessHandle::destroyForcibly);
  }
}
