package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** The way in while nobody looks after accounts yet. */
public final class FirstAdministrator {
  private static final Duration LIFE = Duration.ofDays(7);

  private final AccountBook book;
  private final Links links;

  FirstAdministrator(AccountBook book, Links links) {
    this.book = book;
    this.links = links;
  }

  /** A new link in the place of the one before, unless there is an administrator. */
  public Optional<Secret> link() {
    return book.inTransaction(
        page ->
            page.accounts().lockAdministrators() > 0 ? Optional.empty() : Optional.of(make(page)));
  }

  private Secret make(AccountPage page) {
    Instant now = links.clock().instant();
    page.links().open(now).stream()
        .filter(link -> link.purpose() == LinkPurpose.FIRST_ADMINISTRATOR)
        .forEach(link -> page.links().spend(link.id(), now));
    return links.make(
        page,
        Actor.OPERATOR,
        LinkPurpose.FIRST_ADMINISTRATOR,
        Role.ADMINISTRATOR,
        Optional.empty(),
        LIFE);
  }
}
