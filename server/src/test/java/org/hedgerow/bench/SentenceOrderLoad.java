package org.hedgerow.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.hedgerow.app.RunningJar;

/**
 * How long lists take at the built program while 40 clients, each from an address of its own, order
 * sentences that nobody has ordered before: first clients that wait as {@code Retry-After} says,
 * then clients that don't and ask ten times a second. Everything runs on this machine for a minute,
 * in a temporary folder. Ends with 1 if a list's median grows more than threefold.
 *
 * <pre>java -Dhedgerow.jar=$PWD/server/target/hedgerow.jar \
 *   -cp server/target/test-classes:server/target/hedgerow.jar \
 *   org.hedgerow.bench.SentenceOrderLoad</pre>
 *
 * With an address, as in {@code http://127.0.0.1:8080}, it asks the server that runs there with
 * {@code --behind-tls}.
 */
public final class SentenceOrderLoad {
  private static final int CLIENTS = 40;
  private static final Duration PHASE = Duration.ofSeconds(15);
  private static final Duration IMPATIENT = Duration.ofMillis(100);
  private static final int MAX_GROWTH = 3;
  private static final List<String> PHONOGRAMS = List.of("oa", "ee", "ai", "sh", "igh", "ar", "ou");

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final AtomicInteger seed = new AtomicInteger();
  private final String address;

  private SentenceOrderLoad(String address) {
    this.address = address;
  }

  public static void main(String[] arguments) throws Exception {
    boolean held = arguments.length > 0 ? new SentenceOrderLoad(arguments[0]).run() : startedAnew();
    System.exit(held ? 0 : 1);
  }

  private static boolean startedAnew() throws Exception {
    Path folder = Files.createTempDirectory("hedgerow-orders");
    try (RunningJar jar =
        RunningJar.startWith(folder, List.of("-Xmx512m"), "serve", "--port", "0", "--behind-tls")) {
      boolean held = new SentenceOrderLoad(jar.awaitReady()).run();
      jar.stop();
      return held;
    } finally {
      ReviewLoad.delete(folder);
    }
  }

  private boolean run() throws Exception {
    order(0); // loads the language model
    lists(PHASE.dividedBy(2));
    Times idle = lists(PHASE);
    System.out.printf("lists, idle:              %s%n", idle);
    boolean polite = underLoad("waiting as they are told", true, idle);
    return underLoad("asking ten times a second", false, idle) && polite;
  }

  private boolean underLoad(String who, boolean polite, Times idle) throws Exception {
    Map<Integer, Integer> answers = new TreeMap<>();
    long end = System.nanoTime() + PHASE.toNanos();
    List<Thread> threads = new ArrayList<>();
    for (int i = 0; i < CLIENTS; i++) {
      int number = i;
      threads.add(new Thread(() -> orders(number, polite, end, answers)));
    }
    threads.forEach(Thread::start);
    Times lists = lists(PHASE);
    for (Thread each : threads) {
      each.join();
    }
    double growth = lists.at(0.5) / idle.at(0.5);
    System.out.printf("lists, 40 clients %s: %s%n", who, lists);
    System.out.printf("  orders by status: %s; median × %.2f%n", answers, growth);
    return growth <= MAX_GROWTH;
  }

  private Times lists(Duration duration) {
    Times times = new Times();
    long end = System.nanoTime() + duration.toNanos();
    for (int i = 0; System.nanoTime() < end; i++) {
      String path = "/api/v1/words?limit=50&phonogram=" + PHONOGRAMS.get(i % PHONOGRAMS.size());
      long start = System.nanoTime();
      send(HttpRequest.newBuilder(URI.create(address + path)).build());
      times.add(System.nanoTime() - start);
      Pausing.between(20);
    }
    return times;
  }

  private void orders(int number, boolean polite, long end, Map<Integer, Integer> answers) {
    while (System.nanoTime() < end) {
      HttpResponse<String> answer = order(number);
      synchronized (answers) {
        answers.merge(answer.statusCode(), 1, Integer::sum);
      }
      if (answer.statusCode() != 200) {
        long seconds = answer.headers().firstValueAsLong("Retry-After").orElse(1);
        Pausing.between(polite ? Duration.ofSeconds(seconds).toMillis() : IMPATIENT.toMillis());
      }
    }
  }

  private HttpResponse<String> order(int number) {
    String body =
        "{\"phonogram\": \"%s\", \"count\": 50, \"seed\": %d}"
            .formatted(PHONOGRAMS.get(number % PHONOGRAMS.size()), seed.incrementAndGet());
    return send(
        HttpRequest.newBuilder(URI.create(address + "/api/v1/sentence-drafts"))
            .header("Content-Type", "application/json")
            .header("X-Forwarded-For", "198.51.100." + number)
            .POST(BodyPublishers.ofString(body))
            .build());
  }

  private HttpResponse<String> send(HttpRequest request) {
    try {
      return client.send(request, BodyHandlers.ofString());
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    } catch (InterruptedException interruption) {
      throw new IllegalStateException(interruption);
    }
  }
}
