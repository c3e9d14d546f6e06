package org.hedgerow.caching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
class ComputingCacheTest {
  /** All in one bin of any hash table. */
  private record Colliding(String name) {
    @Override
    public int hashCode() {
      return 7;
    }
  }

  private static final Colliding SLOW = new Colliding("slow");

  private final ComputingCache<Colliding, String> memo = ComputingCache.ofSize(3);
  private final AtomicInteger made = new AtomicInteger();
  private final CountDownLatch begun = new CountDownLatch(1);
  private final CountDownLatch end = new CountDownLatch(1);
  private final ExecutorService threads = Executors.newCachedThreadPool();

  @AfterEach
  void stop() {
    threads.shutdownNow();
  }

  private String make(Colliding key) {
    made.incrementAndGet();
    return key.name() + "!";
  }

  private String makeSlowly(Colliding key) {
    begun.countDown();
    try {
      assertThat(end.await(20, TimeUnit.SECONDS)).isTrue();
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
    return make(key);
  }

  private CompletableFuture<String> inBackground() throws InterruptedException {
    CompletableFuture<String> slow =
        CompletableFuture.supplyAsync(() -> memo.get(SLOW, this::makeSlowly), threads);
    begun.await();
    return slow;
  }

  @Test
  void makesAValueOnce() {
    assertThat(memo.kept(SLOW)).isEmpty();
    assertThat(memo.get(SLOW, this::make)).isEqualTo("slow!");
    assertThat(memo.get(SLOW, this::make)).isEqualTo("slow!");
    assertThat(memo.kept(SLOW)).contains("slow!");
    assertThat(made).hasValue(1);
  }

  /** {@code Cache.get} lets nobody into the bin of a key whose value is being made. */
  @Test
  void othersAreMadeAndEvictedWhileOneIsBeingMade() throws Exception {
    CompletableFuture<String> slow = inBackground();
    for (int i = 0; i < 100; i++) {
      Colliding key = new Colliding("other " + i);
      assertThat(memo.get(key, this::make)).isEqualTo(key.name() + "!");
    }
    memo.forget(key -> key.name().equals("other 99"));
    assertThat(memo.values()).hasSizeLessThanOrEqualTo(3);
    assertThat(memo.kept(SLOW)).as("not yet").isEmpty();
    assertThat(slow).isNotDone();
    end.countDown();
    assertThat(slow.get()).isEqualTo("slow!");
  }

  @Test
  void whoeverAsksMeanwhileWaitsAndGetsTheSame() throws Exception {
    CompletableFuture<String> first = inBackground();
    CompletableFuture<String> second =
        CompletableFuture.supplyAsync(() -> memo.get(SLOW, this::make), threads);
    end.countDown();
    assertThat(second.get()).isSameAs(first.get());
    assertThat(made).hasValue(1);
  }

  @Test
  void oneValueCanBeMadeOfAnother() {
    assertThat(memo.get(SLOW, key -> memo.get(new Colliding("other"), this::make) + "?"))
        .isEqualTo("other!?");
  }

  @Test
  void aFailureIsThrownToAllWhoWaitAndIsNotKept() throws Exception {
    CompletableFuture<String> failing =
        CompletableFuture.supplyAsync(
            () ->
                memo.get(
                    SLOW,
                    key -> {
                      makeSlowly(key);
                      throw new IllegalArgumentException("no such edition");
                    }),
            threads);
    begun.await();
    CompletableFuture<String> waiting =
        CompletableFuture.supplyAsync(() -> memo.get(SLOW, this::make), threads);
    while (made.get() == 0) {
      end.countDown();
    }
    assertThatThrownBy(failing::get).hasCauseInstanceOf(IllegalArgumentException.class);
    assertThat(waiting.handle((value, problem) -> value == null ? "failed" : value).get())
        .isIn("failed", "slow!");
    assertThat(memo.get(SLOW, this::make)).isEqualTo("slow!");
  }

  @Test
  void errorsReachWhoeverWaits() {
    assertThatThrownBy(
            () ->
                memo.get(
                    SLOW,
                    key -> {
                      throw new StackOverflowError("deep");
                    }))
        .isInstanceOf(StackOverflowError.class);
    assertThat(memo.kept(SLOW)).isEmpty();
  }
}
