package org.hedgerow.store.accounts;

import org.hedgerow.accounts.AccountRepository;
import org.hedgerow.accounts.CentreContract;
import org.hedgerow.store.TestDatabase;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** A centre's choices kept in a real database. */
class CentreIT extends CentreContract {
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
