package org.hedgerow.accounts;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;

/** New passwords, for those who know the old one and for those who were given a link. */
public final class Passwords {
  private static final Duration LINK_LIFE = Duration.ofDays(2);

  private final AccountRepository book;
  private final PasswordHash passwords;
  private final Links links;

  Passwords(AccountRepository book, PasswordHash passwords, Links links) {
    this.book = book;
    this.passwords = passwords;
    this.links = links;
  }

  /**
   * The end of a link by which somebody can choose a new password. It voids those before it.
   *
   * @throws NotFoundException if there is no such account
   */
  public Secret link(Actor actor, int accountId) {
    actor.require(Role.ADMINISTRATOR);
    return book.inTransaction(unit -> link(unit, actor, unit.accounts().find(accountId)));
  }

  /** The same for the account of a name. */
  public Secret link(Actor actor, String name) {
    actor.require(Role.ADMINISTRATOR);
    return book.inTransaction(
        unit -> link(unit, actor, unit.accounts().find(NameRules.normalName(name))));
  }

  private Secret link(AccountUnitOfWork unit, Actor actor, Optional<Account> found) {
    Account account = found.orElseThrow(() -> new NotFoundException("The account"));
    spendOpen(unit, account.id());
    return links.make(
        unit,
        actor,
        LinkPurpose.NEW_PASSWORD,
        account.role(),
        Optional.of(account.id()),
        LINK_LIFE);
  }

  private void spendOpen(AccountUnitOfWork unit, int accountId) {
    unit.links().open(links.clock().instant()).stream()
        .filter(link -> link.accountId().equals(Optional.of(accountId)))
        .forEach(link -> unit.links().spend(link.id(), links.clock().instant()));
  }

  /**
   * The account that a link gives a new password.
   *
   * @throws InvalidLinkException if it can't any more
   */
  public Account owner(Secret link) {
    return book.inTransaction(
        unit -> owner(unit, links.open(unit, link).orElseThrow(InvalidLinkException::new)));
  }

  private static Account owner(AccountUnitOfWork unit, Link link) {
    return link.accountId().flatMap(unit.accounts()::find).orElseThrow(InvalidLinkException::new);
  }

  /**
   * Sets a new password by a link, and ends all sessions.
   *
   * @throws InvalidLinkException if it was used before
   * @throws RejectedException if the password can't be; the link stays good
   */
  public Account set(Secret link, String password) {
    Account account = owner(link);
    requireSound(password, account);
    String hash = passwords.of(password);
    return book.inTransaction(
        unit -> {
          Account owner = owner(unit, links.spend(unit, link));
          change(unit, Actor.of(owner), owner, hash, Optional.empty());
          return owner;
        });
  }

  /**
   * Changes the actor's own password, and ends all sessions but one.
   *
   * @param old the password so far
   * @param sessionId the session that stays
   * @throws RejectedException if the old one is wrong or the new one can't be
   */
  public void change(Actor actor, String old, String password, int sessionId) {
    Account account = actor.requireAccount();
    requireSound(password, account);
    requireFits(account, old);
    String hash = passwords.of(password);
    book.inTransaction(
        unit -> {
          change(unit, actor, account, hash, Optional.of(sessionId));
          return hash;
        });
  }

  private static void requireSound(String password, Account account) {
    RejectedException.throwIfAny(
        PasswordRules.error(password, account.name()).map(List::of).orElse(List.of()));
  }

  /** Somebody at a screen that was left alone mustn't be able to try for long. */
  private void requireFits(Account account, String old) {
    book.inTransaction(unit -> throttle(unit, account).enter())
        .ifPresent(
            wait -> {
              throw RejectedException.at(
                  "oldPassword",
                  "That was wrong too often. Try again in %s."
                      .formatted(DurationWords.inWords(wait)));
            });
    String hash = book.inTransaction(unit -> unit.accounts().passwordHash(account.id()));
    if (old.length() > 2 * PasswordRules.MAX_LENGTH || !passwords.fits(old, hash)) {
      throw RejectedException.at("oldPassword", "That isn't your password so far.");
    }
  }

  private Throttle throttle(AccountUnitOfWork unit, Account account) {
    return Throttle.ofPassword(unit.failures(), account.name(), links.clock().instant());
  }

  private void change(
      AccountUnitOfWork unit,
      Actor actor,
      Account account,
      String hash,
      Optional<Integer> session) {
    unit.accounts().changePasswordHash(account.id(), hash);
    int ended = unit.sessions().removeAll(account.id(), session);
    spendOpen(unit, account.id());
    throttle(unit, account).succeed();
    Throttle.forgive(unit.failures(), account.name());
    Audit.of(unit, links.clock())
        .add(actor, "password.changed", Audit.account(account), Map.of("sessions ended", ended));
  }
}
