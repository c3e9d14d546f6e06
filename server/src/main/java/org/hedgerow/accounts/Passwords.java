package org.hedgerow.accounts;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** New passwords, for those who know the old one and for those who were given a link. */
public final class Passwords {
  private static final Duration LINK_LIFE = Duration.ofDays(2);

  private final AccountBook book;
  private final PasswordHash passwords;
  private final Links links;

  Passwords(AccountBook book, PasswordHash passwords, Links links) {
    this.book = book;
    this.passwords = passwords;
    this.links = links;
  }

  /**
   * The end of a link by which somebody can choose a new password. It voids those before it.
   *
   * @throws NothingThereException if there is no such account
   */
  public Secret link(Actor actor, int accountId) {
    actor.require(Role.ADMINISTRATOR);
    return book.inTransaction(page -> link(page, actor, page.accounts().find(accountId)));
  }

  /** The same for the account of a name. */
  public Secret link(Actor actor, String name) {
    actor.require(Role.ADMINISTRATOR);
    return book.inTransaction(
        page -> link(page, actor, page.accounts().find(NameRules.normalName(name))));
  }

  private Secret link(AccountPage page, Actor actor, Optional<Account> found) {
    Account account = found.orElseThrow(() -> new NothingThereException("The account"));
    spendOpen(page, account.id());
    return links.make(
        page,
        actor,
        LinkPurpose.NEW_PASSWORD,
        account.role(),
        Optional.of(account.id()),
        LINK_LIFE);
  }

  private void spendOpen(AccountPage page, int accountId) {
    page.links().open(links.clock().instant()).stream()
        .filter(link -> link.accountId().equals(Optional.of(accountId)))
        .forEach(link -> page.links().spend(link.id(), links.clock().instant()));
  }

  /**
   * The account that a link gives a new password.
   *
   * @throws SpentLinkException if it can't any more
   */
  public Account owner(Secret link) {
    return book.inTransaction(
        page -> owner(page, links.open(page, link).orElseThrow(SpentLinkException::new)));
  }

  private static Account owner(AccountPage page, Link link) {
    return link.accountId().flatMap(page.accounts()::find).orElseThrow(SpentLinkException::new);
  }

  /**
   * Sets a new password by a link, and ends all sessions.
   *
   * @throws SpentLinkException if it was used before
   * @throws RefusedException if the password can't be; the link stays good
   */
  public Account set(Secret link, String password) {
    Account account = owner(link);
    requireSound(password, account);
    String hash = passwords.of(password);
    return book.inTransaction(
        page -> {
          Account owner = owner(page, links.spend(page, link));
          change(page, Actor.of(owner), owner, hash, Optional.empty());
          return owner;
        });
  }

  /**
   * Changes the actor's own password, and ends all sessions but one.
   *
   * @param old the password so far
   * @param sessionId the session that stays
   * @throws RefusedException if the old one is wrong or the new one can't be
   */
  public void change(Actor actor, String old, String password, int sessionId) {
    Account account = actor.requireAccount();
    requireSound(password, account);
    requireFits(account, old);
    String hash = passwords.of(password);
    book.inTransaction(
        page -> {
          change(page, actor, account, hash, Optional.of(sessionId));
          return hash;
        });
  }

  private static void requireSound(String password, Account account) {
    RefusedException.throwIfAny(
        PasswordRules.fault(password, account.name()).map(List::of).orElse(List.of()));
  }

  /** Somebody at a screen that was left alone mustn't be able to try for long. */
  private void requireFits(Account account, String old) {
    book.inTransaction(page -> throttle(page, account).enter())
        .ifPresent(
            wait -> {
              throw RefusedException.at(
                  "oldPassword",
                  "That was wrong too often. Try again in %s.".formatted(Waits.inWords(wait)));
            });
    String hash = book.inTransaction(page -> page.accounts().passwordHash(account.id()));
    if (old.length() > 2 * PasswordRules.LONGEST || !passwords.fits(old, hash)) {
      throw RefusedException.at("oldPassword", "That isn't your password so far.");
    }
  }

  private Throttle throttle(AccountPage page, Account account) {
    return Throttle.ofPassword(page.failures(), account.name(), links.clock().instant());
  }

  private void change(
      AccountPage page, Actor actor, Account account, String hash, Optional<Integer> session) {
    page.accounts().changePasswordHash(account.id(), hash);
    int ended = page.sessions().removeAll(account.id(), session);
    spendOpen(page, account.id());
    throttle(page, account).succeed();
    Throttle.forgive(page.failures(), account.name());
    Audit.of(page, links.clock())
        .add(actor, "password.changed", Audit.account(account), Map.of("sessions ended", ended));
  }
}
