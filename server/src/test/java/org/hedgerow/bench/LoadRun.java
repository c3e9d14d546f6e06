package org.hedgerow.bench;

import static java.nio.charset.StandardCharsets.US_ASCII;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.hedgerow.seed.SeededComposer;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.Routes;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.query.ValueCounts;
import org.hedgerow.web.site.ApiRoutes;

/**
 * How many lists a second the server gives, beside a bare route in the same server that sends the
 * same bytes from memory. Asks only itself, for half a minute. With ports of running jars on this
 * machine it asks those in turn, round after round, so that two builds are compared under the same
 * conditions:
 *
 * <pre>mvn -pl server -am test-compile
 * java -cp … org.hedgerow.bench.LoadRun [8080 [8081 …]]</pre>
 */
public final class LoadRun {

  private static final String LIST = "/api/v1/words?phonogram=ee&limit=50";
  private static final int CONNECTIONS = 8;
  private static final int ROUNDS = 4;
  private static final Duration ROUND = Duration.ofSeconds(2);

  /** The compiler needs some ten thousand requests until nothing gets faster any more. */
  private static final int WARM_UPS = 5;

  private static final int JAR_ROUNDS = 9;

  private final int port;
  private final List<Double> same = new ArrayList<>();
  private final List<Double> fresh = new ArrayList<>();
  private int asked;

  private LoadRun(int port) {
    this.port = port;
  }

  /** Prints the figures. */
  public static void main(String[] arguments) throws Exception {
    if (arguments.length > 0) {
      compareJars(Arrays.stream(arguments).map(Integer::valueOf).toList());
    } else {
      compare();
    }
  }

  private static void compareJars(List<Integer> ports) {
    List<LoadRun> jars = new ArrayList<>(ports.stream().map(LoadRun::new).toList());
    for (int round = 1; round <= WARM_UPS; round++) {
      jars.forEach(LoadRun::warmUp);
    }
    for (int round = 1; round <= JAR_ROUNDS; round++) {
      jars.forEach(LoadRun::measure);
      Collections.reverse(jars); // the machine gets warm too
    }
    jars.forEach(LoadRun::report);
  }

  private static void compare() throws Exception {
    ObjectMapper mapper = JsonMapping.mapper();
    JsonProblems problems = new JsonProblems(mapper);
    Bare bare = new Bare();
    try (WebServer server =
        new WebServer(
            new ListeningAddress("127.0.0.1", 0),
            mapper,
            new PrometheusMeterRegistry(PrometheusConfig.DEFAULT),
            new ErrorMapping(problems, problems),
            List.of(
                new ApiRoutes(
                    SeededLexicon.editions(), new ValueCounts(), SeededComposer.orders(), mapper),
                bare::addTo))) {
      server.start();
      new LoadRun(server.port()).compare(bare);
    }
  }

  /** The route to compare with. */
  private static final class Bare {
    private volatile byte[] bytes = new byte[0];

    void addTo(Routes routes) {
      routes.get(
          "/bare",
          context -> {
            context.res().setContentLength(bytes.length);
            context.disableCompression().contentType("application/json").result(bytes);
          });
    }
  }

  private void warmUp() {
    unheardOf(0); // reads the catalogue before time counts
    run(number -> LIST, ROUND.multipliedBy(2));
    run(LoadRun::unheardOf, ROUND);
  }

  private void measure() {
    same.add(run(number -> LIST, ROUND));
    int offset = asked; // other questions than in the round before
    fresh.add(run(number -> unheardOf(number + offset), ROUND));
  }

  private void report() {
    System.out.printf(
        "port %-5d  GET /words %8.0f a second (%s), never asked yet %8.0f (%s)%n",
        port, median(same), rounded(same), median(fresh), rounded(fresh));
  }

  private static double median(List<Double> rates) {
    return rates.stream().sorted().skip(rates.size() / 2).findFirst().orElseThrow();
  }

  private static String rounded(List<Double> rates) {
    return rates.stream().map("%.0f"::formatted).collect(Collectors.joining(" "));
  }

  private void compare(Bare bare) throws Exception {
    bare.bytes = list();
    System.out.printf("%d bytes, %d connections%n", bare.bytes.length, CONNECTIONS);
    IntFunction<String> same = number -> LIST;
    IntFunction<String> plain = number -> "/bare";
    run(same, ROUND.multipliedBy(2));
    run(plain, ROUND.multipliedBy(2));
    double listed = 0;
    double sent = 0;
    for (int round = 0; round < ROUNDS; round++) {
      listed += run(same, ROUND) / ROUNDS;
      sent += run(plain, ROUND) / ROUNDS;
    }
    System.out.printf("bare route     %8.0f requests a second%n", sent);
    System.out.printf(
        "GET /words     %8.0f, %.0f %% of the bare route%n", listed, 100 * listed / sent);
    double fresh = run(LoadRun::unheardOf, ROUND);
    System.out.printf("never asked yet%8.0f, %.0f %%%n", fresh, 100 * fresh / sent);
  }

  /** Another question every time, so that memory is of no use. */
  private static String unheardOf(int number) {
    List<String> phonograms = SeededLexicon.get().catalogue().phonograms();
    return "/api/v1/words?limit=50&phonogram=%s&commonness=%d&taught=%s"
        .formatted(
            phonograms.get(number % phonograms.size()),
            1 + number % 3,
            phonograms.get(number / phonograms.size() % phonograms.size()));
  }

  private byte[] list() throws Exception {
    URI address = URI.create("http://127.0.0.1:" + port + LIST);
    return HttpClient.newHttpClient()
        .send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofByteArray())
        .body();
  }

  /** Requests a second. */
  private double run(IntFunction<String> paths, Duration duration) {
    ExecutorService threads = Executors.newFixedThreadPool(CONNECTIONS);
    long end = System.nanoTime() + duration.toNanos();
    List<CompletableFuture<Integer>> counts = new ArrayList<>();
    for (int connection = 0; connection < CONNECTIONS; connection++) {
      int first = connection;
      counts.add(CompletableFuture.supplyAsync(() -> ask(paths, first * 1_000_003, end), threads));
    }
    threads.shutdown();
    int all = counts.stream().mapToInt(CompletableFuture::join).sum();
    asked += all;
    return all * 1e9 / duration.toNanos();
  }

  private int ask(IntFunction<String> paths, int first, long end) {
    int count = 0;
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket.setTcpNoDelay(true);
      OutputStream out = socket.getOutputStream();
      InputStream in = new BufferedInputStream(socket.getInputStream(), 1 << 16);
      while (System.nanoTime() < end) {
        String request = "GET %s HTTP/1.1\r\nHost: localhost\r\n\r\n";
        out.write(request.formatted(paths.apply(Math.abs(first + count))).getBytes(US_ASCII));
        skipAnswer(in);
        count++;
      }
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return count;
  }

  private static void skipAnswer(InputStream in) throws IOException {
    String status = line(in);
    if (!status.contains(" 200 ")) {
      throw new IOException(status);
    }
    int length = 0;
    for (String header = line(in); !header.isEmpty(); header = line(in)) {
      if (header.startsWith("Content-Length: ")) {
        length = Integer.parseInt(header.substring("Content-Length: ".length()));
      }
    }
    in.skipNBytes(length);
  }

  private static String line(InputStream in) throws IOException {
    StringBuilder line = new StringBuilder();
    for (int next = in.read(); next != '\n'; next = in.read()) {
      if (next < 0) {
        throw new EOFException();
      }
      line.append((char) next);
    }
    return line.toString().stripTrailing();
  }
}
