package org.hedgerow.accounts;

import java.time.Instant;

/** The attempts that did not succeed, within a transaction. */
public interface FailureStore {
  /** No other transaction sees or changes those of the subject until this one ends. */
  Failures lock(String subject, Instant now);

  void save(Failures failures);

  /** Tidies up. */
  int removeBefore(Instant moment);
}
