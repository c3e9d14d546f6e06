package org.hedgerow.store.database;

import java.sql.SQLException;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.operations.DamagedRecordsException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What PostgreSQL says when it finds its own files damaged. */
public final class DamagedData {
  private static final Logger LOG = LoggerFactory.getLogger(DamagedData.class);

  /** Data corrupted, index corrupted (PostgreSQL's manual, appendix A, class XX). */
  private static final Set<String> STATES = Set.of("XX001", "XX002");

  private DamagedData() {}

  /** A line for people, if damage is what a failure comes from. */
  public static Optional<String> in(Throwable failure) {
    for (@Nullable Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLException sql && STATES.contains(String.valueOf(sql.getSQLState()))) {
        return Optional.of(
            "Data is damaged on the database's disk (%s). Stop Hedgerow and restore a backup."
                .formatted(firstLine(sql)));
      }
    }
    return Optional.empty();
  }

  /**
   * Tells whoever runs the server, in one line, and whoever asked.
   *
   * @throws DamagedRecordsException if damage is what a failure comes from
   */
  static void refuse(RuntimeException failure) {
    Optional<String> damage = in(failure);
    if (damage.isPresent()) {
      LOG.error(damage.get());
      throw new DamagedRecordsException(damage.get(), failure);
    }
  }

  private static String firstLine(SQLException problem) {
    return String.valueOf(problem.getMessage()).lines().findFirst().orElse("");
  }
}
