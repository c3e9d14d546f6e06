package org.hedgerow.accounts;

/** The record of what was done, kept in memory. */
class AuditTest extends AuditContract {
  @Override
  protected AccountRepository book() {
    return new MemoryAccountRepository();
  }
}
