package org.hedgerow.faults;

import java.nio.file.Path;
import java.util.List;
import org.hedgerow.store.BankDatabase;
import org.jdbi.v3.core.Handle;

/**
 * PostgreSQL's own look at its files: every B-tree index against its table, and every table, with
 * the extension {@code amcheck}.
 */
final class AmCheck {
  private static final String INDEXES =
      """
      select bt_index_check(c.oid, true) from pg_class c join pg_am a on a.oid = c.relam
       where a.amname = 'btree' and c.relkind = 'i' and c.relpersistence = 'p'
      """;

  private static final String TABLES =
      """
      select c.relname || ': ' || v.msg from pg_class c, lateral verify_heapam(c.oid) v
       where c.relkind = 'r' and c.relnamespace = 'public'::regnamespace
      """;

  private AmCheck() {}

  /** What is damaged in the database of a served data folder; nothing if all is sound. */
  static List<String> damage(Path data) {
    try (BankDatabase bank = BankDatabase.embeddedOrRunning(data)) {
      return bank.jdbi().withHandle(AmCheck::damage);
    } catch (RuntimeException problem) {
      return List.of("amcheck: " + problem.getMessage());
    }
  }

  private static List<String> damage(Handle handle) {
    handle.execute("create extension if not exists amcheck");
    handle.execute(INDEXES);
    return handle.createQuery(TABLES).mapTo(String.class).list();
  }
}
