package org.hedgerow.faults;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/** Contributors, reviewers and readers at one server or several, until they are told to stop. */
final class Load implements AutoCloseable {
  private static final Duration LAST_ANSWERS = Duration.ofSeconds(60);

  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final AtomicBoolean over = new AtomicBoolean();
  private final AtomicBoolean given = new AtomicBoolean();
  private final AtomicInteger nextWord = new AtomicInteger();
  private final Ledger ledger = new Ledger();
  private final Tally tally = new Tally();
  private final FaultClient client = new FaultClient(tally);
  private final Supplier<List<String>> servers;
  private final Crew crew;

  /**
   * @param servers their addresses, which may change
   */
  Load(Supplier<List<String>> servers, Crew crew) {
    this.servers = servers;
    this.crew = crew;
  }

  Load on(List<Runnable> work) {
    work.forEach(threads::execute);
    return this;
  }

  /** Contributors and reviewers begin. */
  Load write() {
    Writing writing = new Writing(client, servers, given::get);
    List<Runnable> work = new ArrayList<>();
    for (int i = 0; i < crew.contributors().size(); i++) {
      String token = crew.contributors().get(i);
      work.add(new Contributor(writing, i, token, nextWord, ledger, over::get));
    }
    crew.reviewers().forEach(token -> work.add(new Reviewer(writing, token, ledger, over::get)));
    return on(work);
  }

  /**
   * Readers begin.
   *
   * @param mustWork whether every read must be answered 200
   */
  Load read(int readers, boolean mustWork) {
    List<Runnable> work = new ArrayList<>();
    for (int i = 0; i < readers; i++) {
      work.add(new Reader(client, servers, mustWork, over::get));
    }
    return on(work);
  }

  FaultClient client() {
    return client;
  }

  Tally tally() {
    return tally;
  }

  Ledger ledger() {
    return ledger;
  }

  boolean isOver() {
    return over.get();
  }

  /** Everybody finishes what they have begun; what isn't answered in a minute is given up. */
  void stop() throws InterruptedException {
    over.set(true);
    threads.shutdown();
    if (!threads.awaitTermination(LAST_ANSWERS.toSeconds(), TimeUnit.SECONDS)) {
      tally.trouble("writes that were never answered for good");
      close();
    }
  }

  @Override
  public void close() {
    over.set(true);
    given.set(true);
    threads.shutdownNow();
  }
}
