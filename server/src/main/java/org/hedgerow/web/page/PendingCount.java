package org.hedgerow.web.page;

import org.hedgerow.operations.Actor;

/** How much waits for reviewers. Asked for every page of theirs, so it must be cheap. */
@FunctionalInterface
public interface PendingCount {
  int count(Actor reviewer);
}
