package org.hedgerow.web.review;

import java.time.Duration;
import org.hedgerow.caching.Caches;
import org.hedgerow.caching.ComputingCache;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.ContributionQuery;
import org.hedgerow.review.Queue;
import org.hedgerow.web.page.PendingCount;

/**
 * Counts what a reviewer may decide on, their own left out. The number stands on every page of
 * theirs, so it may be a few seconds old. Safe for several threads.
 */
public final class WaitingCount implements PendingCount {
  private static final Duration GOOD_FOR = Duration.ofSeconds(3);
  private static final int REVIEWERS_AT_ONCE = 500;

  private static final int MAX = 1000;

  /** More than that is shown as many. */
  private static final int ENOUGH = 101;

  private final Queue queue;
  private final ComputingCache<Integer, Integer> counts =
      new ComputingCache<>(
          Caches.builder().maximumSize(REVIEWERS_AT_ONCE).expireAfterWrite(GOOD_FOR));

  public WaitingCount(Queue queue) {
    this.queue = queue;
  }

  @Override
  public int count(Actor reviewer) {
    int id = reviewer.requireAccount().id();
    return counts.get(id, key -> read(reviewer, key));
  }

  private int read(Actor reviewer, int id) {
    return (int)
        queue.places(reviewer, ContributionQuery.seenBy(id, MAX)).stream()
            .filter(place -> !place.own())
            .limit(ENOUGH)
            .count();
  }
}
