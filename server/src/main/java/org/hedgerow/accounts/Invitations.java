package org.hedgerow.accounts;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Links by which people get an account, each good for one. */
public final class Invitations {
  /** The longest that one may be good for. */
  public static final int LONGEST_DAYS = 90;

  private final AccountBook book;
  private final PasswordHash passwords;
  private final Links links;

  Invitations(AccountBook book, PasswordHash passwords, Links links) {
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
      throw RefusedException.at("role", "A visitor needs no account.");
    }
    if (days < 1 || days > LONGEST_DAYS) {
      throw RefusedException.at("days", "An invitation is good for 1 to 90 days.");
    }
    return book.inTransaction(page -> invite(page, actor, role, days));
  }

  private Made invite(AccountPage page, Actor actor, Role role, int days) {
    Secret secret =
        links.make(
            page, actor, LinkPurpose.INVITATION, role, Optional.empty(), Duration.ofDays(days));
    return new Made(links.open(page, secret).orElseThrow(SpentLinkException::new), secret);
  }

  /** Links of all kinds that can still be used. */
  public List<Link> open(Actor actor) {
    actor.require(Role.ADMINISTRATOR);
    return book.step(page -> page.links().open(links.clock().instant()));
  }

  /**
   * @throws SpentLinkException if it can't be used any more anyway
   */
  public void withdraw(Actor actor, int linkId) {
    actor.require(Role.ADMINISTRATOR);
    book.inTransaction(page -> withdraw(page, actor, linkId));
  }

  private Link withdraw(AccountPage page, Actor actor, int linkId) {
    Link link =
        page.links()
            .find(linkId)
            .filter(found -> found.isOpen(links.clock().instant()))
            .orElseThrow(SpentLinkException::new);
    page.links().spend(link.id(), links.clock().instant());
    Audit.of(page, links.clock()).add(actor, "link.withdrawn", "link " + linkId, Map.of());
    return link;
  }

  /** What an open link of any kind is for. */
  public Optional<Link> look(Secret secret) {
    return book.step(page -> links.open(page, secret));
  }

  /**
   * Makes the account that the link promises.
   *
   * @throws SpentLinkException if it was used before, or is none that makes accounts
   * @throws RefusedException if something about the account is wrong; the link stays good
   */
  public Account accept(Secret secret, NewAccount wanted) {
    Link link = look(secret).orElseThrow(SpentLinkException::new);
    RefusedException.throwIfAny(wanted.faults());
    String hash = passwords.of(wanted.password());
    return book.inTransaction(page -> accept(page, secret, wanted, hash, link.purpose()));
  }

  private Account accept(
      AccountPage page, Secret secret, NewAccount wanted, String hash, LinkPurpose purpose) {
    requireMakesAccounts(page, purpose);
    Link link = links.spend(page, secret);
    Account account =
        page.accounts()
            .add(wanted.name(), wanted.displayName(), link.role(), hash, links.clock().instant())
            .orElseThrow(
                () ->
                    RefusedException.at(
                        "name", "Somebody has the name %s already.".formatted(wanted.name())));
    Audit.of(page, links.clock())
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

  private static void requireMakesAccounts(AccountPage page, LinkPurpose purpose) {
    boolean makes =
        switch (purpose) {
          case INVITATION -> true;
          case FIRST_ADMINISTRATOR -> page.accounts().lockAdministrators() == 0;
          case NEW_PASSWORD -> false;
        };
    if (!makes) {
      throw new SpentLinkException();
    }
  }
}
