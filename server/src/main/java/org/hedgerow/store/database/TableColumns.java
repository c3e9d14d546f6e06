package org.hedgerow.store.database;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** The columns of our tables, as the database knows them. */
public final class TableColumns {
  private TableColumns() {}

  /** Their names in order. */
  public static List<String> of(Handle handle, String table) {
    return handle
        .createQuery(
            """
            select column_name from information_schema.columns
            where table_schema = current_schema and table_name = :table
            order by ordinal_position
            """)
        .bind("table", table)
        .mapTo(String.class)
        .list();
  }

  /** Makes the ids that the database gives from now on follow those that are there. */
  public static void countOn(Handle handle, String table) {
    handle.execute(
        """
        select setval(pg_get_serial_sequence('%1$s', 'id'), coalesce((select max(id) from %1$s), 1),
          exists (select from %1$s))
        """
            .formatted(table));
  }

  /** Whether the database gives ids of its own. */
  public static boolean hasCountedIds(Handle handle, String table) {
    return handle
        .createQuery(
            """
            select exists (select from information_schema.columns
              where table_schema = current_schema and table_name = :table
                and column_name = 'id' and is_identity = 'YES')
            """)
        .bind("table", table)
        .mapTo(Boolean.class)
        .one();
  }
}
