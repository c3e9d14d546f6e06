package org.hedgerow.store;

import java.sql.SQLException;
import java.util.function.Supplier;
import org.hedgerow.accounts.UnavailableException;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.JdbiException;

/** Tells a database that can't be reached from a fault of ours. */
final class Outages {
  private Outages() {}

  /**
   * @throws UnavailableException if the database doesn't answer
   */
  static <R> R told(Supplier<R> work) {
    try {
      return work.get();
    } catch (ConnectionException problem) {
      throw unavailable(problem);
    } catch (JdbiException problem) {
      throw isBroken(problem) ? unavailable(problem) : problem;
    }
  }

  private static UnavailableException unavailable(JdbiException problem) {
    return new UnavailableException("The database doesn't answer.", problem);
  }

  /** PostgreSQL's classes 08, connection exceptions, and 57, operator intervention. */
  private static boolean isBroken(JdbiException problem) {
    return problem.getCause() instanceof SQLException cause
        && String.valueOf(cause.getSQLState()).matches("(08|57).*");
  }
}
