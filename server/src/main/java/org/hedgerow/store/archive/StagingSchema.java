package org.hedgerow.store.archive;

import javax.sql.DataSource;
import org.hedgerow.store.database.SchemaMigration;
import org.hedgerow.store.database.TableColumns;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * A place beside the bank's tables where rows of an earlier version are put and brought up to date
 * by the migrations that came since. Closing it deletes the place.
 */
final class StagingSchema implements AutoCloseable {
  private static final String NAME = "hedgerow_import";

  private final DataSource dataSource;
  private final Jdbi jdbi;

  private StagingSchema(DataSource dataSource, Jdbi jdbi) {
    this.dataSource = dataSource;
    this.jdbi = jdbi;
  }

  /**
   * @param version of the tables that it has at first
   */
  static StagingSchema make(DataSource dataSource, Jdbi jdbi, String version) {
    StagingSchema schema = new StagingSchema(dataSource, jdbi);
    schema.drop();
    SchemaMigration.run(dataSource, NAME, version);
    return schema;
  }

  /** Lets the names of tables mean those of the place until the transaction ends. */
  void use(Handle handle) {
    handle.execute("set local search_path to " + NAME);
  }

  void bringUpToDate() {
    SchemaMigration.run(dataSource, NAME, SchemaMigration.NEWEST);
  }

  /** Copies all rows into the bank's tables. */
  void copy(Handle handle) {
    handle.execute("set constraints all deferred");
    handle.execute("delete from centre");
    for (ArchivedTable table : ArchivedTable.all(true)) {
      String columns = String.join(", ", TableColumns.of(handle, table.name()));
      handle.execute(
          "insert into %1$s (%2$s) overriding system value select %2$s from %3$s.%1$s order by %4$s"
              .formatted(table.name(), columns, NAME, table.order()));
      if (TableColumns.hasCountedIds(handle, table.name())) {
        TableColumns.countOn(handle, table.name());
      }
    }
  }

  private void drop() {
    jdbi.useHandle(handle -> handle.execute("drop schema if exists %s cascade".formatted(NAME)));
  }

  @Override
  public void close() {
    drop();
  }
}
