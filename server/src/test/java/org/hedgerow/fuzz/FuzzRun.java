package org.hedgerow.fuzz;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import org.hedgerow.web.contract.ApiDocument;

/** Sends hostile requests over several connections until there were enough or time is up. */
public final class FuzzRun {
  private static final int CONNECTIONS = 4;

  private final RequestMaker requests;
  private final Oracle oracle;
  private final int port;
  private final Map<String, String> tokens;

  /**
   * @param tokens of a contributor, a reviewer and an administrator, by the names of these roles
   */
  public FuzzRun(long seed, int port, Map<String, String> tokens, Oracle oracle) {
    this.requests = new RequestMaker(ApiDocument.published(), seed);
    this.port = port;
    this.oracle = oracle;
    this.tokens = Map.copyOf(tokens);
  }

  /**
   * @param first number of the first request
   */
  public FuzzReport run(long first, long count, Duration longest) throws InterruptedException {
    FuzzReport report = new FuzzReport();
    AtomicLong next = new AtomicLong(first);
    long end = System.nanoTime() + longest.toNanos();
    ExecutorService threads = Executors.newFixedThreadPool(CONNECTIONS);
    List<Future<?>> running = new ArrayList<>();
    for (int i = 0; i < CONNECTIONS; i++) {
      running.add(threads.submit(() -> work(next, first + count, end, report)));
    }
    threads.shutdown();
    for (Future<?> each : running) {
      await(each);
    }
    return report;
  }

  private static void await(Future<?> running) throws InterruptedException {
    try {
      running.get();
    } catch (ExecutionException problem) {
      throw new IllegalStateException(problem.getCause());
    }
  }

  private void work(AtomicLong next, long bound, long end, FuzzReport report) {
    try (Wire wire = new Wire(port, tokens)) {
      for (long number = next.getAndIncrement();
          number < bound && System.nanoTime() < end;
          number = next.getAndIncrement()) {
        HostileRequest request = requests.request(number);
        Answer answer = wire.ask(request);
        report.add(request, answer);
        for (String what : oracle.errors(request, answer)) {
          report.add(new Fault(number, request, what, answer));
        }
      }
    }
  }

  /** What is wrong with the answer to one request, asked again. */
  List<String> replay(HostileRequest request) {
    try (Wire wire = new Wire(port, tokens)) {
      return oracle.errors(request, wire.ask(request));
    }
  }

  /** Every kind of error in words, with a request that shows it, as small as it can be made. */
  public List<String> described(FuzzReport report) {
    return report.errors().stream().map(this::described).toList();
  }

  private String described(Fault error) {
    HostileRequest small =
        new Shrinker(request -> replay(request).contains(error.what())).shrunk(error.request());
    String body = error.answer().body().replaceAll("[^!-~]+", " ");
    return "# Request %d: %s%n# answered %d %s%n%s"
        .formatted(
            error.number(),
            error.kind(),
            error.answer().status(),
            body.substring(0, Math.min(300, body.length())),
            RequestFile.write(small));
  }
}
