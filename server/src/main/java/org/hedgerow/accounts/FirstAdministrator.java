package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;

/** The way in while nobody looks after accounts yet. */
public final class FirstAdministrator {
  private static final Duration LIFE = Duration.ofDays(7);

  private final AccountRepository book;
  private final Links links;

  FirstAdministrator(AccountRepository book, Links links) {
    this.book = book;
    this.links = links;
  }

  /** A new link in the place of the one before, unless there is an administrator. */
  public Optional<Secret> link() {
    return book.inTransaction(
        unit ->
            unit.accounts().lockAdministrators() > 0 ? Optional.empty() : Optional.of(make(unit)));
  }

  private Secret make(AccountUnitOfWork unit) {
    Instant now = links.clock().instant();
    unit.links().open(now).stream()
        .filter(link -> link.purpose() == LinkPurpose.FIRST_ADMINISTRATOR)
        .forEach(link -> unit.links().spend(link.id(), now));
    return links.make(
        unit,
        Actor.OPERATOR,
        LinkPurpose.FIRST_ADMINISTRATOR,
        Role.ADMINISTRATOR,
        Optional.empty(),
        LIFE);
  }
}
