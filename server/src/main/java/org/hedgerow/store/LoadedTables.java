package org.hedgerow.store;

import static java.util.stream.Collectors.joining;

import org.jdbi.v3.core.Jdbi;

/**
 * Tables into which very many rows were just written. Until PostgreSQL has counted them it plans
 * queries as if they were nearly empty, and it would do so, and tidy up, in the first minutes in
 * which people work (PostgreSQL's manual, "Populating a Database", "Run ANALYZE Afterwards").
 */
final class LoadedTables {
  private LoadedTables() {}

  /** Lets all tables of the bank be counted and tidied now; takes a few seconds. */
  static void settle(Jdbi jdbi) {
    String tables = ArchivedTable.all(true).stream().map(ArchivedTable::name).collect(joining(","));
    jdbi.useHandle(handle -> handle.execute("vacuum (analyze) " + tables));
  }
}
