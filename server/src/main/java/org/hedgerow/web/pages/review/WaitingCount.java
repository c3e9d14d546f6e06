package org.hedgerow.web.pages.review;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Duration;
import java.util.Set;
import org.hedgerow.accounts.Actor;
import org.hedgerow.review.ContributionQuery;
import org.hedgerow.review.Reviews;
import org.hedgerow.review.State;
import org.hedgerow.web.pages.Waiting;

/**
 * Counts what a reviewer may decide on, their own left out. The number stands on every page of
 * theirs, so it may be a few seconds old. Safe for several threads.
 */
public final class WaitingCount implements Waiting {
  private static final Duration GOOD_FOR = Duration.ofSeconds(3);
  private static final int REVIEWERS_AT_ONCE = 500;

  /** More than that is shown as many. */
  private static final int ENOUGH = 101;

  private final Reviews reviews;
  private final Cache<Integer, Integer> counts =
      Caffeine.newBuilder().maximumSize(REVIEWERS_AT_ONCE).expireAfterWrite(GOOD_FOR).build();

  public WaitingCount(Reviews reviews) {
    this.reviews = reviews;
  }

  @Override
  public int count(Actor reviewer) {
    int id = reviewer.requireAccount().id();
    return counts.get(id, key -> read(reviewer, key));
  }

  private int read(Actor reviewer, int id) {
    ContributionQuery waiting = ContributionQuery.seenBy(id, ENOUGH).in(Set.of(State.SUBMITTED));
    return (int)
        reviews.find(reviewer, waiting).stream()
            .filter(each -> !reviewer.is(each.author().accountId()))
            .count();
  }
}
