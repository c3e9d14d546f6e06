package org.hedgerow.store.accounts;

import java.util.List;
import org.hedgerow.accounts.AccountRepository;
import org.hedgerow.store.TestDatabase;

/** Tables about accounts with nothing in them. */
public final class EmptyAccounts {
  private EmptyAccounts() {}

  /** As the owner of the tables may, and a careless program may not. */
  public static AccountRepository in(TestDatabase database) {
    List.of(
            "alter table audit disable trigger audit_stays",
            "alter table decisions disable trigger decisions_stay",
            "truncate accounts, links, sessions, api_tokens, sign_in_failures, audit cascade",
            "alter table audit enable trigger audit_stays",
            "alter table decisions enable trigger decisions_stay",
            "update centre set name = null, approvals = 1, version = 1")
        .forEach(
            statement -> database.bank().jdbi().useHandle(handle -> handle.execute(statement)));
    return new JdbiAccountRepository(database.bank());
  }
}
