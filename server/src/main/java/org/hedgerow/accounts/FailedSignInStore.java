package org.hedgerow.accounts;

import java.time.Instant;

/** The attempts that did not succeed, within a transaction. */
public interface FailedSignInStore {
  /** No other transaction sees or changes those of the subject until this one ends. */
  FailedSignIns lock(String subject, Instant now);

  void save(FailedSignIns failures);

  void remove(String subject);

  void removeStartingWith(String prefix);

  /** Tidies up. */
  int removeBefore(Instant moment);

  /**
   * Removes the oldest where there are too many.
   *
   * @return how many were removed
   */
  int keepNewest(int max);
}
