package org.hedgerow.web.http;

import com.github.benmanes.caffeine.cache.Cache;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import org.hedgerow.caching.Caches;

/**
 * The queries of the last seconds. They are replayed against a new edition before it goes live, so
 * that its first readers don't wait. Thread-safe.
 *
 * @param <Q> a question, equal to others that ask the same
 */
public final class RecentQueries<Q> {

  private static final Duration REMEMBERED = Duration.ofSeconds(10);
  private static final int MAX = 100;

  /** People wait for the edition meanwhile. */
  private static final long MAX_NANOSECONDS = Duration.ofMillis(20).toNanos();

  private final Cache<Q, Boolean> questions =
      Caches.builder().expireAfterAccess(REMEMBERED).maximumSize(MAX).build();

  /** Records a query. */
  public void remember(Q question) {
    if (questions.getIfPresent(question) == null) {
      questions.put(question, true);
    }
  }

  /** Replays the queries, roughly the latest first, for a short time at most. */
  @SuppressWarnings("ThreadPriorityCheck") // only a courtesy: nothing relies on it
  public void replay(Consumer<Q> asker) {
    long start = System.nanoTime();
    for (Q question : latest()) {
      if (System.nanoTime() - start > MAX_NANOSECONDS) {
        return;
      }
      ask(question, asker);
      Thread.yield(); // whoever reads meanwhile needn't wait for all of them
    }
  }

  private List<Q> latest() {
    return questions.policy().expireAfterAccess().orElseThrow().youngest(MAX).keySet().stream()
        .toList();
  }

  /** Errors are reported when the query is really asked. */
  private static <Q> void ask(Q question, Consumer<Q> asker) {
    try {
      asker.accept(question);
    } catch (RuntimeException toldLater) {
      // a word may be gone that was asked for
    }
  }
}
