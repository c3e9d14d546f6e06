package org.hedgerow.store.database;

import java.sql.SQLException;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What an SQLSTATE means for whoever asked; see PostgreSQL's manual, appendix A. */
final class SqlStates {
  /**
   * The database can't do it now and may be able to soon: 08 connection exceptions, 53 too many
   * connections or too little memory, 57 stopping, crashed or cancelled after the time that a
   * statement may take, 25006 a replica that only reads, 25P03 idle for too long in a transaction,
   * 40P01 and 55P03 a lock that can't be had.
   */
  private static final Pattern PASSING = Pattern.compile("(08|53|57).*|25006|25P03|40P01|55P03");

  private static final String DISK_FULL = "53100";

  /** PostgreSQL says so under other states too, where a file of its own can't be written. */
  private static final String NO_SPACE = "No space left on device";

  private SqlStates() {}

  static boolean isPassing(Throwable problem) {
    return find(problem, SqlStates::isPassing);
  }

  private static boolean isPassing(SQLException problem) {
    return PASSING.matcher(String.valueOf(problem.getSQLState())).matches();
  }

  /** No connection can be had, or one broke. */
  static boolean isConnectionProblem(Throwable problem) {
    return find(problem, sql -> String.valueOf(sql.getSQLState()).matches("(08|57P).*"));
  }

  static boolean isStorageFull(Throwable problem) {
    return find(
        problem,
        sql ->
            DISK_FULL.equals(sql.getSQLState())
                || String.valueOf(sql.getMessage()).contains(NO_SPACE));
  }

  private static boolean find(Throwable problem, Predicate<SQLException> test) {
    for (@Nullable Throwable cause = problem; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLException sql && test.test(sql)) {
        return true;
      }
    }
    return false;
  }
}
