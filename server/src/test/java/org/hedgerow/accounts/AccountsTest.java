package org.hedgerow.accounts;

/** Accounts kept in memory. */
class AccountsTest extends AccountsContract {
  private final AccountRepository book = new MemoryAccountRepository();

  @Override
  protected AccountRepository book() {
    return book;
  }
}
