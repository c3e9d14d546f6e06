package org.hedgerow.accounts;

/** Accounts kept in memory. */
class AccountsTest extends AccountsContract {
  private final AccountRepository book = new MemoryBook();

  @Override
  protected AccountRepository book() {
    return book;
  }
}
