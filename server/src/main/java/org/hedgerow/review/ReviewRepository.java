package org.hedgerow.review;

import java.util.function.Function;

/** Where contributions and decisions are kept, beside the bank. Safe for use by several threads. */
public interface ReviewRepository {
  /**
   * Does some work wholly, or not at all if it throws.
   *
   * @throws org.hedgerow.operations.UnavailableException if the records can't be reached
   */
  <R> R inTransaction(Function<ReviewUnitOfWork, R> work);

  /**
   * Only reads, each time what stands just then: a transaction would cost trips to the database and
   * show nothing else.
   *
   * @throws org.hedgerow.operations.UnavailableException if the records can't be reached
   */
  default <R> R reading(Function<ReviewUnitOfWork, R> work) {
    return inTransaction(work);
  }
}
