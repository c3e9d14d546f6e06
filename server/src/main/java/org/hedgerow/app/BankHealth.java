package org.hedgerow.app;

import org.hedgerow.store.BankDatabase;
import org.hedgerow.web.Health;

/** The health of a server is that of its bank. */
record BankHealth(BankDatabase bank) implements Health {
  @Override
  public boolean isStuck() {
    return bank.isStuck();
  }

  @Override
  public boolean takesWrites() {
    return bank.takesWrites();
  }
}
