package org.hedgerow.web.http;

import com.github.benmanes.caffeine.cache.Cache;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import org.hedgerow.caching.Caches;

/**
 * What was asked in the last seconds. An edition that is about to be the newest is asked the same,
 * so that its first readers don't wait for what has to be worked out anew. Thread-safe.
 *
 * @param <Q> a question, equal to others that ask the same
 */
public final class Lately<Q> {

  private static final Duration REMEMBERED = Duration.ofSeconds(10);
  private static final int MOST = 100;

  /** People wait for the edition meanwhile. */
  private static final long LONGEST_NANOSECONDS = Duration.ofMillis(20).toNanos();

  private final Cache<Q, Boolean> questions =
      Caches.builder().expireAfterAccess(REMEMBERED).maximumSize(MOST).build();

  /** Remembers that a question was asked. */
  public void asked(Q question) {
    if (questions.getIfPresent(question) == null) {
      questions.put(question, true);
    }
  }

  /** Asks all of them again, about the latest first, as far as it doesn't take long. */
  @SuppressWarnings("ThreadPriorityCheck") // only a courtesy: nothing relies on it
  public void askAgain(Consumer<Q> asker) {
    long start = System.nanoTime();
    for (Q question : latest()) {
      if (System.nanoTime() - start > LONGEST_NANOSECONDS) {
        return;
      }
      ask(question, asker);
      Thread.yield(); // whoever reads meanwhile needn't wait for all of them
    }
  }

  private List<Q> latest() {
    return questions.policy().expireAfterAccess().orElseThrow().youngest(MOST).keySet().stream()
        .toList();
  }

  /** What goes wrong is told to whoever really asks. */
  private static <Q> void ask(Q question, Consumer<Q> asker) {
    try {
      asker.accept(question);
    } catch (RuntimeException toldLater) {
      // a word may be gone that was asked for
    }
  }
}
