package org.hedgerow.accounts;

import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** All accounts, for administrators; and the name that everybody can choose. */
public final class People {
  private final AccountBook book;
  private final InstantSource clock;

  People(AccountBook book, InstantSource clock) {
    this.book = book;
    this.clock = clock;
  }

  /** By name. */
  public List<Account> all(Actor actor) {
    actor.require(Role.ADMINISTRATOR);
    return book.step(page -> page.accounts().all());
  }

  public Optional<Account> find(Actor actor, int accountId) {
    Sessions.requireOwnerOrAdministrator(actor, accountId);
    return book.step(page -> page.accounts().find(accountId));
  }

  /** Changes the name that others see. */
  public void rename(Actor actor, int accountId, String typed) {
    Sessions.requireOwnerOrAdministrator(actor, accountId);
    String name = NameRules.normalDisplayName(typed);
    NameRules.displayNameFault(name)
        .ifPresent(fault -> RefusedException.throwIfAny(List.of(fault)));
    change(
        actor,
        accountId,
        "account.renamed",
        (page, account) -> {
          page.accounts().changeDisplayName(account.id(), name);
          return Change.of("displayName", account.displayName(), name);
        });
  }

  /**
   * @throws RefusedException if nobody would be left who looks after accounts
   */
  public void changeRole(Actor actor, int accountId, Role role) {
    actor.require(Role.ADMINISTRATOR);
    requireAccountRole(role);
    change(actor, accountId, "account.role", (page, account) -> setRole(page, account, role));
  }

  private static void requireAccountRole(Role role) {
    if (role == Role.VISITOR) {
      throw RefusedException.at("role", "A visitor needs no account.");
    }
  }

  private static Change setRole(AccountPage page, Account account, Role role) {
    requireAnotherAdministrator(page, account, role == Role.ADMINISTRATOR);
    page.accounts().changeRole(account.id(), role);
    return Change.of("role", account.role().label(), role.label());
  }

  /**
   * Lets somebody sign in again, or no longer: then all their sessions end.
   *
   * @throws RefusedException if nobody would be left who looks after accounts
   */
  public void changeActive(Actor actor, int accountId, boolean active) {
    actor.require(Role.ADMINISTRATOR);
    change(actor, accountId, "account.active", (page, account) -> setActive(page, account, active));
  }

  private static Change setActive(AccountPage page, Account account, boolean active) {
    requireAnotherAdministrator(page, account, active);
    page.accounts().changeActive(account.id(), active);
    if (!active) {
      page.sessions().removeAll(account.id(), Optional.empty());
    }
    return Change.of("active", account.active(), active);
  }

  /**
   * Changes role and access at once, or nothing.
   *
   * @param role none if it stays
   * @param active none if it stays
   * @param asExpected whether the account is still as the actor knows it
   * @return how it is now
   * @throws ChangedMeanwhileException if it isn't as expected
   * @throws RefusedException if nobody would be left who looks after accounts
   */
  public Account edit(
      Actor actor,
      int accountId,
      Optional<Role> role,
      Optional<Boolean> active,
      Predicate<Account> asExpected) {
    actor.require(Role.ADMINISTRATOR);
    role.ifPresent(People::requireAccountRole);
    return book.inTransaction(
        page -> {
          requireExpected(lock(page, accountId), asExpected);
          role.ifPresent(
              wanted ->
                  change(
                      page, actor, accountId, "account.role", (on, it) -> setRole(on, it, wanted)));
          active.ifPresent(
              wanted ->
                  change(
                      page,
                      actor,
                      accountId,
                      "account.active",
                      (on, it) -> setActive(on, it, wanted)));
          return lock(page, accountId);
        });
  }

  private static void requireExpected(Account account, Predicate<Account> asExpected) {
    if (!asExpected.test(account)) {
      throw new ChangedMeanwhileException(
          "The account %s was changed in the meantime: its role is %s now, and it may %s."
              .formatted(
                  account.name(),
                  account.role().label(),
                  account.active() ? "sign in" : "not sign in"));
    }
  }

  private static void requireAnotherAdministrator(
      AccountPage page, Account account, boolean stays) {
    boolean counts = account.active() && account.role() == Role.ADMINISTRATOR;
    if (counts && page.accounts().lockAdministrators() < 2 && !stays) {
      throw RefusedException.at(
          "account", "This is the only administrator. Make somebody else one before.");
    }
  }

  private record Change(Map<String, Object> before, Map<String, Object> after) {
    static Change of(String what, Object before, Object after) {
      return new Change(Map.of(what, before), Map.of(what, after));
    }

    boolean isNone() {
      return before.equals(after);
    }
  }

  private interface Changer {
    Change apply(AccountPage page, Account account);
  }

  private void change(Actor actor, int accountId, String action, Changer changer) {
    book.inTransaction(page -> change(page, actor, accountId, action, changer));
  }

  /** What stays as it was isn't recorded. */
  private Account change(
      AccountPage page, Actor actor, int accountId, String action, Changer changer) {
    Account account = lock(page, accountId);
    Change change = changer.apply(page, account);
    if (!change.isNone()) {
      Audit.of(page, clock)
          .add(actor, action, Audit.account(account), change.before(), change.after());
    }
    return account;
  }

  /** Two who change an administrator at the same time take turns. */
  private static Account lock(AccountPage page, int accountId) {
    page.accounts().lockAdministrators();
    return page.accounts()
        .find(accountId)
        .orElseThrow(() -> new NothingThereException("The account"));
  }
}
