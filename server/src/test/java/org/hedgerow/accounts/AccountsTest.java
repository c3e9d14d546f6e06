package org.hedgerow.accounts;

/** Accounts kept in memory. */
class AccountsTest extends AccountsContract {
  private final AccountBook book = new MemoryBook();

  @Override
  protected AccountBook book() {
    return book;
  }
}
