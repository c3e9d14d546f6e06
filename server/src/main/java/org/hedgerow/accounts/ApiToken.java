package org.hedgerow.accounts;

import java.time.Instant;
import java.util.Optional;
import org.hedgerow.operations.Role;

/**
 * Lets a program act for an account.
 *
 * @param label what it is for, in its owner's words
 * @param role at most; the program never may more than the account
 * @param usedAt when it was last used, to about a minute
 */
public record ApiToken(
    int id,
    int accountId,
    String label,
    Role role,
    Instant madeAt,
    Instant expiresAt,
    Optional<Instant> usedAt) {

  boolean isOver(Instant now) {
    return !now.isBefore(expiresAt);
  }

  boolean wasUsedAWhileAgo(Instant now) {
    return usedAt.isEmpty() || !now.isBefore(usedAt.get().plus(Session.NOTICEABLE));
  }
}
