package org.hedgerow.review;

import java.time.Instant;
import java.util.List;

/** Decisions, within a transaction; they are only ever added. */
public interface DecisionStore {
  Decision add(Contribution on, NewDecision decision, Person by, Instant at);

  /** On a contribution, the oldest first. */
  List<Decision> on(int contributionId);
}
