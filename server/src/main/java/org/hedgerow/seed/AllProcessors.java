package org.hedgerow.seed;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/**
 * Maps a long list with as many threads as there are processors. The threads are its own: those of
 * the common pool may be waiting for whoever calls this.
 */
final class AllProcessors {
  /** Small enough that all threads end at about the same time. */
  private static final int CHUNK = 2_000;

  private AllProcessors() {}

  /** The results in the order of the list. */
  static <T, R> List<R> map(List<T> all, Function<T, R> work) {
    ExecutorService threads =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      List<R> results = new ArrayList<>(all.size());
      for (Future<List<R>> chunk : threads.invokeAll(chunks(all, work))) {
        results.addAll(chunk.get());
      }
      return List.copyOf(results);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped in the middle", stopped);
    } catch (ExecutionException failure) {
      throw failure.getCause() instanceof RuntimeException cause
          ? cause
          : new IllegalStateException(failure.getCause());
    } finally {
      threads.shutdownNow();
    }
  }

  private static <T, R> List<Callable<List<R>>> chunks(List<T> all, Function<T, R> work) {
    List<Callable<List<R>>> chunks = new ArrayList<>();
    for (int from = 0; from < all.size(); from += CHUNK) {
      List<T> chunk = all.subList(from, Math.min(from + CHUNK, all.size()));
      chunks.add(() -> chunk.stream().map(work).toList());
    }
    return chunks;
  }
}
