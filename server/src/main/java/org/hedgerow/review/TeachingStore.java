package org.hedgerow.review;

import java.time.Instant;
import org.hedgerow.operations.Actor;
import org.hedgerow.reading.Teaching;

/** The named sets of reading rules, the sequences and the sight words, within a transaction. */
public interface TeachingStore {
  /** As they stand; to be asked for after {@link BankStore#lock}. */
  Teaching current();

  /**
   * Makes the next edition, in which they stand so.
   *
   * @param summary for people
   * @return its number
   */
  int publish(Teaching changed, String summary, Actor by, Instant at);
}
