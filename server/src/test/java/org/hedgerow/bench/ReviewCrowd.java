package org.hedgerow.bench;

import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.NewAccount;
import org.hedgerow.accounts.Secret;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;

/** Makes accounts of which nobody knows the password, with a token each. */
final class ReviewCrowd {
  private final AccountServices services;

  ReviewCrowd(AccountServices services) {
    this.services = services;
  }

  /** The new account's token. */
  String join(String name, Role role) {
    Secret link = services.invitations().make(Actor.OPERATOR, role, 1);
    String password = link.text().substring(0, 30);
    Account account = services.invitations().accept(link, new NewAccount(name, name, password));
    return services.tokens().make(Actor.of(account), "load", role, 1).text();
  }
}
