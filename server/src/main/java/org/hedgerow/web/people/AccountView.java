package org.hedgerow.web.people;

import java.time.Instant;
import java.util.Optional;
import org.hedgerow.accounts.ApiToken;
import org.hedgerow.web.security.Identity;

/** Whom a token stands for. */
record AccountView(String name, String displayName, String role, Optional<Used> token) {

  record Used(String label, Instant expires) {
    static Used of(ApiToken token) {
      return new Used(token.label(), token.expiresAt());
    }
  }

  static AccountView of(Identity identity) {
    var account = identity.actor().requireAccount();
    return new AccountView(
        account.name(),
        account.displayName(),
        identity.actor().role().label(),
        identity.token().map(Used::of));
  }
}
