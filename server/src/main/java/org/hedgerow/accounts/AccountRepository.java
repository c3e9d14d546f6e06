package org.hedgerow.accounts;

import java.util.function.Function;
import org.hedgerow.operations.UnavailableException;

/** Runs units of work on the accounts. Safe for use by several threads. */
public interface AccountRepository {
  /**
   * Does some work wholly, or not at all if it throws.
   *
   * @throws UnavailableException if the records can't be reached
   */
  <R> R inTransaction(Function<AccountUnitOfWork, R> work);

  /**
   * Does some work of which each step stands for itself: what most requests begin with, so no trips
   * to the database are made for a transaction that nobody needs.
   *
   * @throws UnavailableException if the records can't be reached
   */
  default <R> R step(Function<AccountUnitOfWork, R> work) {
    return inTransaction(work);
  }
}
