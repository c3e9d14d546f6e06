package org.hedgerow.store.editions;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.IntStream;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.TestDatabase;
import org.junit.jupiter.api.Test;

/**
 * Readers ask for old editions at random while others are published, and the common pool is busy
 * with something else. Everybody has to get on: it once happened that an edition was made inside a
 * cache, by a parallel stream that waited for a thread which waited to enter that cache.
 *
 * <p>Takes a few seconds, or as many as {@code -Dhedgerow.load.seconds} says.
 */
class OldEditionsUnderLoadIT {
  private static final Duration LENGTH =
      Duration.ofSeconds(Integer.getInteger("hedgerow.load.seconds", 5));

  /** Nothing that is asked for here takes a second, unless the machine is busy with others. */
  private static final Duration STUCK = Duration.ofSeconds(20);

  private static final int READERS = 6;
  private static final int OLD_EDITIONS = 30;
  private static final int WORDS_IN_AN_EDITION = 4;

  private static final FirstEdition COMMON =
      SeededEdition.of(
          SeededLexicon.get().words().stream()
              .filter(word -> word.commonness() == 5)
              .limit(500)
              .map(Word::spelling)
              .toArray(String[]::new));

  /** A thread of the load, with when it last got something done. */
  private static final class Busy {
    private final AtomicLong last = new AtomicLong(System.nanoTime());
    private final AtomicLong done = new AtomicLong();
    private final Thread thread;

    Busy(String name, Instant end, Runnable step) {
      thread =
          new Thread(
              () -> {
                while (Instant.now().isBefore(end)) {
                  step.run();
                  done.incrementAndGet();
                  last.set(System.nanoTime());
                }
              },
              name);
      thread.setDaemon(true);
      thread.start();
    }

    boolean isStuck() {
      return thread.isAlive() && System.nanoTime() - last.get() > STUCK.toNanos();
    }
  }

  /**
   * Occupies all threads of the common pool and goes on queueing work for them, so that nobody can
   * rely on what they submit there being run.
   */
  private static final class TakenPool {
    private final CountDownLatch end = new CountDownLatch(1);

    TakenPool() {
      for (int i = 0; i < ForkJoinPool.getCommonPoolParallelism(); i++) {
        ForkJoinPool.commonPool().execute(this::await);
      }
      for (int i = 0; i < 4; i++) {
        Thread thread = new Thread(this::push, "push " + i);
        thread.setDaemon(true);
        thread.start();
      }
    }

    private void await() {
      try {
        end.await();
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
      }
    }

    private void push() {
      while (end.getCount() > 0) {
        ForkJoinPool.commonPool().execute(() -> {});
        LockSupport.parkNanos(100_000);
      }
    }

    void end() {
      end.countDown();
    }
  }

  @Test
  void readersAndWritersNeverWaitForEachOtherForEver() throws Exception {
    try (TestDatabase database = TestDatabase.open()) {
      new BankFiller(database.bank()).fill(() -> COMMON, "The first.", () -> {});
      try (LiveEditions editions =
          new LiveEditions(database.bank(), new EditionReader(database.bank()).first().lexicon())) {
        editions.beforeEach(next -> next.find(query(next.edition())));
        IntStream.range(0, OLD_EDITIONS).forEach(i -> publish(database.bank(), editions));
        TakenPool pool = new TakenPool();
        try {
          run(database.bank(), editions);
        } finally {
          pool.end();
        }
      }
    }
  }

  private static void run(BankDatabase bank, LiveEditions editions) throws InterruptedException {
    Instant end = Instant.now().plus(LENGTH);
    List<Busy> all = new ArrayList<>();
    all.add(new Busy("writer", end, () -> publish(bank, editions)));
    for (int i = 0; i < READERS; i++) {
      Random random = new Random(i);
      all.add(new Busy("reader " + i, end, () -> read(editions, random)));
    }
    while (all.stream().anyMatch(each -> each.thread.isAlive())) {
      TimeUnit.MILLISECONDS.sleep(100);
      assertThat(all).filteredOn(Busy::isStuck).extracting(each -> each.thread.getName()).isEmpty();
    }
    assertThat(all).allMatch(each -> each.done.get() > 0);
  }

  private static void read(LiveEditions editions, Random random) {
    int number = 1 + random.nextInt(editions.newest().edition());
    editions.at(number).orElseThrow().find(query(random.nextInt(20)));
  }

  private static WordQuery query(int number) {
    List<Correspondence> values = COMMON.accents().get(0).catalogue().correspondences();
    return WordQuery.of("en-US", Standard.of(values.get(number % values.size())));
  }

  private static void publish(BankDatabase bank, LiveEditions editions) {
    int number =
        bank.jdbi()
            .inTransaction(
                handle -> {
                  EditionWriter writer = new EditionWriter(handle, COMMON.accents());
                  int edition =
                      writer.publish(
                          "A test.", OptionalInt.empty(), OptionalInt.empty(), Instant.EPOCH);
                  writer.replace(words(edition), edition);
                  return edition;
                });
    editions.catchUp(number);
  }

  private static List<Word> words(int edition) {
    int from = edition * WORDS_IN_AN_EDITION % (COMMON.words().size() - WORDS_IN_AN_EDITION);
    return COMMON.words().subList(from, from + WORDS_IN_AN_EDITION).stream()
        .map(OldEditionsUnderLoadIT::approved)
        .toList();
  }

  private static Word approved(Word word) {
    return new Word(
        word.spelling(),
        Status.APPROVED,
        word.commonness(),
        word.since(),
        word.tags(),
        word.pronunciations());
  }
}
