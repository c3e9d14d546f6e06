package org.hedgerow.accounts;

import java.time.Instant;
import java.util.Optional;
import org.hedgerow.operations.Role;

/**
 * A link that somebody was given.
 *
 * @param role of the account that it makes, or that it is for
 * @param accountId the account whose password it changes; none where it makes an account
 * @param madeBy for people to read
 * @param spentAt when it was used or withdrawn
 */
public record Link(
    int id,
    LinkPurpose purpose,
    Role role,
    Optional<Integer> accountId,
    String madeBy,
    Instant madeAt,
    Instant expiresAt,
    Optional<Instant> spentAt) {

  boolean isOpen(Instant now) {
    return spentAt.isEmpty() && now.isBefore(expiresAt);
  }
}
