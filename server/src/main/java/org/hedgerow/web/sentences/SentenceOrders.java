package org.hedgerow.web.sentences;

import com.github.benmanes.caffeine.cache.Cache;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.Optional;
import org.hedgerow.caching.Caches;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.compose.Composer;
import org.hedgerow.sentences.compose.DraftOrder;
import org.hedgerow.sentences.compose.Drafts;
import org.hedgerow.web.security.Pace;
import org.hedgerow.web.security.Turns;

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
  private final Pace pace;
  private final Turns turns;
  private final Cache<Order, Drafts> kept =
      Caches.builder().maximumSize(MAX_KEPT).expireAfterAccess(KEPT_FOR).build();

  /** By the number of the edition: a lexicon in here would be kept long after it was replaced. */
  private record Order(DraftOrder order, int edition, SentenceStandard standard) {}

  /**
   * @param pace how many orders a client may send
   */
  public SentenceOrders(Composer composer, Pace pace) {
    this(composer, pace, Math.max(1, Runtime.getRuntime().availableProcessors() / 2));
  }

  SentenceOrders(Composer composer, Pace pace, int atATime) {
    this.composer = composer;
    this.pace = pace;
    this.turns =
        new Turns(
            atATime,
            WAITING,
            PATIENCE,
            "Many people are having sentences made at this moment. Wait a few seconds, then try again.");
  }

  /**
   * @throws org.hedgerow.web.problems.ProblemException if the client, or all clients together, ask
   *     for too much
   */
  public Drafts compose(
      Context context, DraftOrder order, Lexicon lexicon, SentenceStandard standard) {
    Order asked = new Order(order, lexicon.edition(), standard);
    Optional<Drafts> known = known(asked);
    if (known.isPresent()) {
      pace.show(context);
      return known.get();
    }
    pace.count(context);
    return turns.take(context, () -> known(asked).orElseGet(() -> composed(asked, lexicon)));
  }

  private Optional<Drafts> known(Order asked) {
    return Optional.ofNullable(kept.getIfPresent(asked));
  }

  private Drafts composed(Order asked, Lexicon lexicon) {
    Drafts made = composer.compose(asked.order(), lexicon, asked.standard());
    kept.put(asked, made);
    return made;
  }
}
