package org.hedgerow.store.accounts;

import java.util.function.Function;
import org.hedgerow.accounts.AccountRepository;
import org.hedgerow.accounts.AccountStore;
import org.hedgerow.accounts.AccountUnitOfWork;
import org.hedgerow.accounts.AuditTrail;
import org.hedgerow.accounts.CentreStore;
import org.hedgerow.accounts.DeviceStore;
import org.hedgerow.accounts.FailedSignInStore;
import org.hedgerow.accounts.LinkStore;
import org.hedgerow.accounts.SessionStore;
import org.hedgerow.accounts.TokenStore;
import org.hedgerow.operations.AuditLog;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.JdbiAudit;
import org.hedgerow.store.database.Outage;
import org.hedgerow.store.database.Transactions;
import org.jdbi.v3.core.Handle;

/** Keeps everything about accounts in the bank's database. */
public final class JdbiAccountRepository implements AccountRepository {
  private final Transactions transactions;
  private final Outage outage;

  public JdbiAccountRepository(BankDatabase bank) {
    this.transactions = bank.transactions();
    this.outage = bank.outage();
  }

  @Override
  public <R> R inTransaction(Function<AccountUnitOfWork, R> work) {
    return outage.toldWriting(() -> transactions.run(handle -> work.apply(new Page(handle))));
  }

  @Override
  public <R> R step(Function<AccountUnitOfWork, R> work) {
    return outage.told(() -> transactions.read(handle -> work.apply(new Page(handle))));
  }

  private record Page(Handle handle) implements AccountUnitOfWork {
    @Override
    public AccountStore accounts() {
      return new JdbiAccounts(handle);
    }

    @Override
    public LinkStore links() {
      return new JdbiLinks(handle);
    }

    @Override
    public SessionStore sessions() {
      return new JdbiSessions(handle);
    }

    @Override
    public TokenStore tokens() {
      return new JdbiTokens(handle);
    }

    @Override
    public FailedSignInStore failures() {
      return new JdbiFailedSignIns(handle);
    }

    @Override
    public DeviceStore devices() {
      return new JdbiDevices(handle);
    }

    @Override
    public AuditLog audit() {
      return new JdbiAudit(handle);
    }

    @Override
    public AuditTrail trail() {
      return new JdbiAuditTrail(handle);
    }

    @Override
    public CentreStore centre() {
      return new JdbiCentre(handle);
    }
  }
}
