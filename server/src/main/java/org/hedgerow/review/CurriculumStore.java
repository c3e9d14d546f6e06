package org.hedgerow.review;

import java.time.Instant;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.operations.Actor;

/** The named sets of reading rules, the sequences and the sight words, within a transaction. */
public interface CurriculumStore {
  /** As they stand; to be asked for after {@link BankStore#lock}. */
  Curriculum current();

  /**
   * Makes the next edition, in which they stand so.
   *
   * @param summary for people
   * @return its number
   */
  int publish(Curriculum changed, String summary, Actor by, Instant at);
}
