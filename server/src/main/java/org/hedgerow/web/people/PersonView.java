package org.hedgerow.web.people;

import java.time.Instant;
import org.hedgerow.operations.Account;

/**
 * An account, as an administrator sees it.
 *
 * @param since when it was made
 */
record PersonView(
    int id, String name, String displayName, String role, boolean active, Instant since) {

  static PersonView of(Account account) {
    return new PersonView(
        account.id(),
        account.name(),
        account.displayName(),
        account.role().label(),
        account.active(),
        account.since());
  }
}
