package org.hedgerow.caching;

import com.github.benmanes.caffeine.cache.AsyncCache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * A cache that computes each missing value once, on the thread of whoever asks first; others who
 * ask for the same value wait for that thread. Thread-safe.
 *
 * <p>The computation runs outside the cache. {@code Cache.get(key, function)} would run it while it
 * holds a bin of a hash table, which blocks everybody whose key happens to share that bin, and
 * eviction too; a computation that in turn waits for one of those never ends. Here it may take as
 * long as it likes and use other caches. Asking for a value while computing that same value is the
 * one thing that can't work.
 *
 * <p>A computation that fails is not kept: everyone who waited for it gets what was thrown, and
 * whoever asks next tries again.
 */
public final class ComputingCache<K, V> {
  private final AsyncCache<K, V> values;

  /**
   * @param builder from {@link Caches#builder()}, with bounds for the number, weight or age of the
   *     values; what is still being computed doesn't count
   */
  public ComputingCache(Caffeine<? super K, ? super V> builder) {
    this.values = builder.buildAsync();
  }

  /** Keeps so many values, those that were used most lately or most often. */
  public static <K, V> ComputingCache<K, V> ofSize(long maximumSize) {
    return new ComputingCache<>(Caches.builder().maximumSize(maximumSize));
  }

  public V get(K key, Function<? super K, ? extends V> maker) {
    CompletableFuture<V> known = values.getIfPresent(key);
    return known == null ? make(key, maker) : await(known);
  }

  private V make(K key, Function<? super K, ? extends V> maker) {
    CompletableFuture<V> ours = new CompletableFuture<>();
    CompletableFuture<V> earlier = values.asMap().putIfAbsent(key, ours);
    return earlier == null ? complete(ours, key, maker) : await(earlier);
  }

  /** Whatever is thrown must reach those who wait, or they would wait for ever. */
  private static <K, V> V complete(
      CompletableFuture<V> ours, K key, Function<? super K, ? extends V> maker) {
    try {
      V made = maker.apply(key);
      ours.complete(made);
      return made;
    } catch (RuntimeException | Error failure) {
      ours.completeExceptionally(abandoned(failure));
      throw failure;
    }
  }

  /** Caffeine writes a warning with a trace for any other kind of exception. */
  private static CancellationException abandoned(Throwable failure) {
    CancellationException abandoned = new CancellationException();
    abandoned.initCause(failure);
    return abandoned;
  }

  private static <V> V await(CompletableFuture<V> value) {
    try {
      return value.join();
    } catch (CancellationException abandoned) {
      throw cause(abandoned);
    }
  }

  private static RuntimeException cause(CancellationException abandoned) {
    if (abandoned.getCause() instanceof Error error) {
      throw error;
    }
    return abandoned.getCause() instanceof RuntimeException cause ? cause : abandoned;
  }

  /** A value that has been computed and is still kept; never waits. */
  public Optional<V> kept(K key) {
    return Optional.ofNullable(values.getIfPresent(key)).map(ComputingCache::computed);
  }

  private static <V> @Nullable V computed(CompletableFuture<V> value) {
    return value.isDone() && !value.isCompletedExceptionally() ? value.join() : null;
  }

  /** Keeps a value that was computed elsewhere. */
  public void put(K key, V value) {
    values.put(key, CompletableFuture.completedFuture(value));
  }

  /** Forgets the values of some keys. */
  public void forget(Predicate<? super K> keys) {
    values.asMap().keySet().removeIf(keys);
  }

  /** The values kept at the moment, after those that exceed the bounds are gone. */
  public List<V> values() {
    values.synchronous().cleanUp();
    return List.copyOf(values.synchronous().asMap().values());
  }
}
