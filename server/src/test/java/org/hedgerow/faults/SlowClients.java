package org.hedgerow.faults;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.bench.Times;
import org.hedgerow.faults.FaultClient.Call;

/**
 * Clients that send their bodies or headers a byte now and then, or never read what they asked for,
 * while others read.
 */
final class SlowClients implements Scenario {
  private static final int CLIENTS = 200;
  private static final double MAX_HEALTH = 100;

  private static final String BODY =
      "POST /api/v1/word-checks HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 100000\r\n\r\n{";
  private static final String HEADERS = "GET /api/v1/words HTTP/1.1\r\nHost: a\r\nX-Slow: ";
  private static final String UNREAD =
      "GET /api/v1/words?shape=cvc&limit=500 HTTP/1.1\r\nHost: a\r\n\r\n".repeat(20);
  private static final String ENORMOUS =
      "POST /api/v1/word-checks HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 100000000000\r\n\r\n";

  @Override
  public String name() {
    return "slow-clients";
  }

  @Override
  public Result run(Ground ground) throws Exception {
    Duration duration = ground.lasting(Duration.ofSeconds(90), Duration.ofSeconds(25));
    Tally tally = new Tally();
    List<Socket> slow = new ArrayList<>();
    try (ServerProcess server = ServerProcess.start(ground.withBank(name())).awaitReady()) {
      Times health = new Times();
      Times lists = new Times();
      measure(server, tally, Duration.ofSeconds(5), new Times(), new Times());
      for (int i = 0; i < CLIENTS; i++) {
        slow.add(connect(server.port(), List.of(BODY, BODY, HEADERS, UNREAD).get(i % 4)));
      }
      Thread drip = new Thread(() -> drip(slow), "drip");
      drip.setDaemon(true);
      drip.start();
      enormous(server.port(), tally);
      measure(server, tally, duration, health, lists);
      drip.interrupt();
      if (health.at(0.5) > MAX_HEALTH) {
        tally.trouble("health takes %.0f ms".formatted(health.at(0.5)));
      }
      server.stop();
      return Result.of(
          name(),
          "%d clients slow with bodies, headers or reading, for %d s"
              .formatted(CLIENTS, duration.toSeconds()),
          tally,
          Reckoning.NOTHING,
          "health p50 %.1f ms, most %.0f ms; list p50 %.1f ms, most %.0f ms"
              .formatted(health.at(0.5), health.at(1), lists.at(0.5), lists.at(1)));
    } finally {
      close(slow);
    }
  }

  private static Socket connect(int port, String first) throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
    socket.getOutputStream().write(first.getBytes(US_ASCII));
    return socket;
  }

  private static void drip(List<Socket> slow) {
    while (!Thread.currentThread().isInterrupted()) {
      Writing.pause(8000);
      slow.forEach(SlowClients::drip);
    }
  }

  private static void drip(Socket socket) {
    try {
      socket.getOutputStream().write(' ');
    } catch (IOException refused) {
      return; // the server has had enough
    }
  }

  /** A body that is too large is refused before any of it is read. */
  private static void enormous(int port, Tally tally) throws IOException {
    long start = System.nanoTime();
    try (Socket socket = connect(port, ENORMOUS)) {
      socket.setSoTimeout((int) Tally.MAX_LENGTH.toMillis());
      String status = new String(socket.getInputStream().readNBytes(12), US_ASCII);
      if (!status.equals("HTTP/1.1 413")) {
        tally.trouble("a body of 100 GB is answered " + status);
      }
    } catch (IOException silent) {
      tally.trouble("a body of 100 GB isn't refused at once");
    }
    tally.took("POST of 100 GB", Duration.ofNanos(System.nanoTime() - start));
  }

  private static void measure(
      ServerProcess server, Tally tally, Duration duration, Times health, Times lists) {
    FaultClient client = new FaultClient(tally);
    long end = System.nanoTime() + duration.toNanos();
    while (System.nanoTime() < end) {
      time(client, server, "/health/live", health);
      time(client, server, Reader.PATHS.get(0), lists);
      Writing.pause(50);
    }
  }

  private static void time(FaultClient client, ServerProcess server, String path, Times times) {
    long start = System.nanoTime();
    Optional<Integer> status =
        client.ask(server.address(), Call.get(path, "")).map(answer -> answer.statusCode());
    times.add(System.nanoTime() - start);
    if (status.orElse(0) != 200) {
      client.tally().trouble("%s answered %d".formatted(path, status.orElse(0)));
    }
  }

  private static void close(List<Socket> sockets) throws IOException {
    for (Socket socket : sockets) {
      socket.close();
    }
  }
}
