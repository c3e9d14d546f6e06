package org.hedgerow.accounts;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;

/** Links by which people get an account, each good for one. */
public final class Invitations {
  /** The longest that one may be good for. */
  public static final int MAX_DAYS = 90;

  private final AccountRepository book;
  private final PasswordHash passwords;
  private final Links links;

  Invitations(AccountRepository book, PasswordHash passwords, Links links) {
    this.book = book;
    this.passwords = passwords;
    this.links = links;
  }

  /**
   * What was made.
   *
   * @param secret the end of the link, which nobody can be told again
   */
  public record Made(Link link, Secret secret) {}

  /**
   * @param role of the account it makes
   * @return the end of the link, which nobody can be told again
   */
  public Secret make(Actor actor, Role role, int days) {
    return invite(actor, role, days).secret();
  }

  /**
   * @param role of the account it makes
   */
  public Made invite(Actor actor, Role role, int days) {
    actor.require(Role.ADMINISTRATOR);
    if (role == Role.VISITOR) {
      throw RejectedException.at("role", "A visitor needs no account.");
    }
    if (days < 1 || days > MAX_DAYS) {
      throw RejectedException.at("days", "An invitation is good for 1 to 90 days.");
    }
    return book.inTransaction(unit -> invite(unit, actor, role, days));
  }

  private Made invite(AccountUnitOfWork unit, Actor actor, Role role, int days) {
    Secret secret =
        links.make(
            unit, actor, LinkPurpose.INVITATION, role, Optional.empty(), Duration.ofDays(days));
    return new Made(links.open(unit, secret).orElseThrow(InvalidLinkException::new), secret);
  }

  /** Links of all kinds that can still be used. */
  public List<Link> open(Actor actor) {
    actor.require(Role.ADMINISTRATOR);
    return book.step(unit -> unit.links().open(links.clock().instant()));
  }

  /**
   * @throws InvalidLinkException if it can't be used any more anyway
   */
  public void withdraw(Actor actor, int linkId) {
    actor.require(Role.ADMINISTRATOR);
    book.inTransaction(unit -> withdraw(unit, actor, linkId));
  }

  private Link withdraw(AccountUnitOfWork unit, Actor actor, int linkId) {
    Link link =
        unit.links()
            .find(linkId)
            .filter(found -> found.isOpen(links.clock().instant()))
            .orElseThrow(InvalidLinkException::new);
    unit.links().spend(link.id(), links.clock().instant());
    Audit.of(unit, links.clock()).add(actor, "link.withdrawn", "link " + linkId, Map.of());
    return link;
  }

  /** What an open link of any kind is for. */
  public Optional<Link> look(Secret secret) {
    return book.step(unit -> links.open(unit, secret));
  }

  /**
   * Makes the account that the link promises.
   *
   * @throws InvalidLinkException if it was used before, or is none that makes accounts
   * @throws RejectedException if something about the account is wrong; the link stays good
   */
  public Account accept(Secret secret, NewAccount wanted) {
    Link link = look(secret).orElseThrow(InvalidLinkException::new);
    RejectedException.throwIfAny(wanted.errors());
    String hash = passwords.of(wanted.password());
    return book.inTransaction(unit -> accept(unit, secret, wanted, hash, link.purpose()));
  }

  private Account accept(
      AccountUnitOfWork unit, Secret secret, NewAccount wanted, String hash, LinkPurpose purpose) {
    requireMakesAccounts(unit, purpose);
    Link link = links.spend(unit, secret);
    Account account =
        unit.accounts()
            .add(wanted.name(), wanted.displayName(), link.role(), hash, links.clock().instant())
            .orElseThrow(
                () ->
                    RejectedException.at(
                        "name", "Somebody has the name %s already.".formatted(wanted.name())));
    Audit.of(unit, links.clock())
        .add(
            Actor.of(account),
            "account.made",
            Audit.account(account),
            Map.of(
                "name", account.name(),
                "displayName", account.displayName(),
                "role", account.role().label(),
                "link", link.id()));
    return account;
  }

  private static void requireMakesAccounts(AccountUnitOfWork unit, LinkPurpose purpose) {
    boolean makes =
        switch (purpose) {
          case INVITATION -> true;
          case FIRST_ADMINISTRATOR -> unit.accounts().lockAdministrators() == 0;
          case NEW_PASSWORD -> false;
        };
    if (!makes) {
      throw new InvalidLinkException();
    }
  }
}
