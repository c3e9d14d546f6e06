package org.hedgerow.store.archive;

import static java.util.stream.Collectors.joining;

import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Tables into which very many rows were just written. Until PostgreSQL has counted them it plans
 * queries as if they were nearly empty, and it would do so, and tidy up, in the first minutes in
 * which people work (PostgreSQL's manual, "Populating a Database", "Run ANALYZE Afterwards").
 */
public final class LoadedTables {
  private static final Logger LOG = LoggerFactory.getLogger(LoadedTables.class);

  private LoadedTables() {}

  /** Lets all tables of the bank be counted and tidied now; where that fails, nothing is lost. */
  public static void settle(Jdbi jdbi) {
    String tables = ArchivedTable.all(true).stream().map(ArchivedTable::name).collect(joining(","));
    try {
      jdbi.useHandle(handle -> handle.execute("vacuum (analyze) " + tables));
    } catch (JdbiException problem) {
      LOG.warn("The tables can't be counted now; PostgreSQL will do so by itself", problem);
    }
  }
}
