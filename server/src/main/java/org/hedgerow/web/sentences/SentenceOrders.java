package org.hedgerow.web.sentences;

import com.github.benmanes.caffeine.cache.Cache;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.Optional;
import org.hedgerow.caching.Caches;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.compose.ComposedSentences;
import org.hedgerow.sentences.compose.Composer;
import org.hedgerow.sentences.compose.CompositionRequest;
import org.hedgerow.web.security.ConcurrencyLimit;
import org.hedgerow.web.security.RateLimit;

/**
 * Composes sentences for clients, within bounds: a quota for each client, and at most half of the
 * processors for all together. An order that was composed a short while ago is answered again from
 * memory and counts for nothing. Thread-safe.
 */
public final class SentenceOrders {
  private static final int WAITING = 4;
  private static final Duration PATIENCE = Duration.ofSeconds(2);
  private static final int MAX_KEPT = 300;
  private static final Duration KEPT_FOR = Duration.ofMinutes(10);

  private final Composer composer;
  private final RateLimit pace;
  private final ConcurrencyLimit turns;
  private final Cache<Order, ComposedSentences> kept =
      Caches.builder().maximumSize(MAX_KEPT).expireAfterAccess(KEPT_FOR).build();

  /** By the number of the edition: a lexicon in here would be kept long after it was replaced. */
  private record Order(CompositionRequest order, int edition, SentenceStandard standard) {}

  /**
   * @param pace how many orders a client may send
   */
  public SentenceOrders(Composer composer, RateLimit pace) {
    this(composer, pace, Math.max(1, Runtime.getRuntime().availableProcessors() / 2));
  }

  SentenceOrders(Composer composer, RateLimit pace, int atATime) {
    this.composer = composer;
    this.pace = pace;
    this.turns =
        new ConcurrencyLimit(
            atATime,
            WAITING,
            PATIENCE,
            "Many people are having sentences made at this moment. Wait a few seconds, then try again.");
  }

  /**
   * @throws org.hedgerow.web.problems.ProblemException if the client, or all clients together, ask
   *     for too much
   */
  public ComposedSentences compose(
      Context context, CompositionRequest order, Lexicon lexicon, SentenceStandard standard) {
    Order asked = new Order(order, lexicon.edition(), standard);
    Optional<ComposedSentences> known = known(asked);
    if (known.isPresent()) {
      pace.show(context);
      return known.get();
    }
    pace.count(context);
    return turns.take(context, () -> known(asked).orElseGet(() -> composed(asked, lexicon)));
  }

  private Optional<ComposedSentences> known(Order asked) {
    return Optional.ofNullable(kept.getIfPresent(asked));
  }

  private ComposedSentences composed(Order asked, Lexicon lexicon) {
    ComposedSentences made = composer.compose(asked.order(), lexicon, asked.standard());
    kept.put(asked, made);
    return made;
  }
}
