package org.hedgerow.web.people;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.Link;

/**
 * A link that somebody was given.
 *
 * @param account the account that gets a new password by it
 * @param address the whole link, only where it was just made
 */
record LinkView(
    int id,
    String purpose,
    String role,
    Optional<Integer> account,
    String madeBy,
    Instant made,
    Instant expires,
    Optional<String> address) {

  /** All that can still be used. */
  record All(List<LinkView> invitations) {
    static All of(List<Link> links) {
      return new All(links.stream().map(link -> LinkView.of(link, Optional.empty())).toList());
    }
  }

  static LinkView of(Link link, Optional<String> address) {
    return new LinkView(
        link.id(),
        link.purpose().label(),
        link.role().label(),
        link.accountId(),
        link.madeBy(),
        link.madeAt(),
        link.expiresAt(),
        address);
  }
}
