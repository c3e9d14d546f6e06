package org.hedgerow.accounts;

import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;
import org.hedgerow.operations.StaleUpdateException;

/** All accounts, for administrators; and the name that everybody can choose. */
public final class People {
  private final AccountRepository book;
  private final InstantSource clock;

  People(AccountRepository book, InstantSource clock) {
    this.book = book;
    this.clock = clock;
  }

  /** By name. */
  public List<Account> all(Actor actor) {
    actor.require(Role.ADMINISTRATOR);
    return book.step(unit -> unit.accounts().all());
  }

  public Optional<Account> find(Actor actor, int accountId) {
    Sessions.requireOwnerOrAdministrator(actor, accountId);
    return book.step(unit -> unit.accounts().find(accountId));
  }

  /** Changes the name that others see. */
  public void rename(Actor actor, int accountId, String typed) {
    Sessions.requireOwnerOrAdministrator(actor, accountId);
    String name = NameRules.normalDisplayName(typed);
    NameRules.displayNameFault(name)
        .ifPresent(error -> RejectedException.throwIfAny(List.of(error)));
    change(
        actor,
        accountId,
        "account.renamed",
        (unit, account) -> {
          unit.accounts().changeDisplayName(account.id(), name);
          return Change.of("displayName", account.displayName(), name);
        });
  }

  /**
   * @throws RejectedException if nobody would be left who looks after accounts
   */
  public void changeRole(Actor actor, int accountId, Role role) {
    actor.require(Role.ADMINISTRATOR);
    requireAccountRole(role);
    change(actor, accountId, "account.role", (unit, account) -> setRole(unit, account, role));
  }

  private static void requireAccountRole(Role role) {
    if (role == Role.VISITOR) {
      throw RejectedException.at("role", "A visitor needs no account.");
    }
  }

  private static Change setRole(AccountUnitOfWork unit, Account account, Role role) {
    requireAnotherAdministrator(unit, account, role == Role.ADMINISTRATOR);
    unit.accounts().changeRole(account.id(), role);
    return Change.of("role", account.role().label(), role.label());
  }

  /**
   * Lets somebody sign in again, or no longer: then all their sessions end.
   *
   * @throws RejectedException if nobody would be left who looks after accounts
   */
  public void changeActive(Actor actor, int accountId, boolean active) {
    actor.require(Role.ADMINISTRATOR);
    change(actor, accountId, "account.active", (unit, account) -> setActive(unit, account, active));
  }

  private static Change setActive(AccountUnitOfWork unit, Account account, boolean active) {
    requireAnotherAdministrator(unit, account, active);
    unit.accounts().changeActive(account.id(), active);
    if (!active) {
      unit.sessions().removeAll(account.id(), Optional.empty());
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
   * @throws StaleUpdateException if it isn't as expected
   * @throws RejectedException if nobody would be left who looks after accounts
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
        unit -> {
          requireExpected(lock(unit, accountId), asExpected);
          role.ifPresent(
              wanted ->
                  change(
                      unit, actor, accountId, "account.role", (on, it) -> setRole(on, it, wanted)));
          active.ifPresent(
              wanted ->
                  change(
                      unit,
                      actor,
                      accountId,
                      "account.active",
                      (on, it) -> setActive(on, it, wanted)));
          return lock(unit, accountId);
        });
  }

  private static void requireExpected(Account account, Predicate<Account> asExpected) {
    if (!asExpected.test(account)) {
      throw new StaleUpdateException(
          "The account %s was changed in the meantime: its role is %s now, and it may %s."
              .formatted(
                  account.name(),
                  account.role().label(),
                  account.active() ? "sign in" : "not sign in"));
    }
  }

  private static void requireAnotherAdministrator(
      AccountUnitOfWork unit, Account account, boolean stays) {
    boolean counts = account.active() && account.role() == Role.ADMINISTRATOR;
    if (counts && unit.accounts().lockAdministrators() < 2 && !stays) {
      throw RejectedException.at(
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
    Change apply(AccountUnitOfWork unit, Account account);
  }

  private void change(Actor actor, int accountId, String action, Changer changer) {
    book.inTransaction(unit -> change(unit, actor, accountId, action, changer));
  }

  /** What stays as it was isn't recorded. */
  private Account change(
      AccountUnitOfWork unit, Actor actor, int accountId, String action, Changer changer) {
    Account account = lock(unit, accountId);
    Change change = changer.apply(unit, account);
    if (!change.isNone()) {
      Audit.of(unit, clock)
          .add(actor, action, Audit.account(account), change.before(), change.after());
    }
    return account;
  }

  /** Two who change an administrator at the same time take turns. */
  private static Account lock(AccountUnitOfWork unit, int accountId) {
    unit.accounts().lockAdministrators();
    return unit.accounts().find(accountId).orElseThrow(() -> new NotFoundException("The account"));
  }
}
