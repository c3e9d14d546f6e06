package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;

/** What all kinds of links have in common. */
final class Links {
  private final Secrets secrets;
  private final InstantSource clock;

  Links(Secrets secrets, InstantSource clock) {
    this.secrets = secrets;
    this.clock = clock;
  }

  /** Makes one and records it. */
  Secret make(
      AccountUnitOfWork unit,
      Actor actor,
      LinkPurpose purpose,
      Role role,
      Optional<Integer> accountId,
      Duration life) {
    Secret secret = secrets.fresh();
    Instant now = clock.instant();
    Instant end = now.plus(life);
    int id = unit.links().add(secret.hash(), purpose, role, accountId, actor.name(), now, end);
    Audit.of(unit, clock)
        .add(
            actor,
            "link.made",
            "link " + id,
            Map.of("purpose", purpose.label(), "role", role.label(), "expires", end.toString()));
    return secret;
  }

  Optional<Link> open(AccountUnitOfWork unit, Secret secret) {
    return unit.links().find(secret.hash()).filter(link -> link.isOpen(clock.instant()));
  }

  /**
   * The link, which is good for nothing from now on.
   *
   * @throws InvalidLinkException if it was so before
   */
  Link spend(AccountUnitOfWork unit, Secret secret) {
    Link link = open(unit, secret).orElseThrow(InvalidLinkException::new);
    unit.links().spend(link.id(), clock.instant());
    return link;
  }

  InstantSource clock() {
    return clock;
  }
}
