package org.hedgerow.store.accounts;

import org.hedgerow.accounts.AccountRepository;
import org.hedgerow.accounts.AuditContract;
import org.hedgerow.store.TestDatabase;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** The record of what was done, kept in a real database. */
class AuditIT extends AuditContract {
  private static TestDatabase database;

  @BeforeAll
  static void create() {
    database = TestDatabase.open();
  }

  @AfterAll
  static void drop() {
    database.close();
  }

  @Override
  protected AccountRepository book() {
    return EmptyAccounts.in(database);
  }
}
