package org.hedgerow.operations;

import java.util.Optional;

/**
 * Whoever does something.
 *
 * @param account none for a visitor and for whoever runs the server
 * @param role what they may do; with a token it may be less than the account's
 * @param name for the record of what was done
 */
public record Actor(Optional<Account> account, Role role, String name) {
  /** Anybody at all. */
  public static final Actor VISITOR = new Actor(Optional.empty(), Role.VISITOR, "a visitor");

  /** Whoever can run commands on the server's machine. */
  public static final Actor OPERATOR =
      new Actor(Optional.empty(), Role.ADMINISTRATOR, "the command line");

  public static Actor of(Account account) {
    return of(account, account.role());
  }

  public static Actor of(Account account, Role limit) {
    return new Actor(Optional.of(account), account.role().atMost(limit), account.name());
  }

  /** Whether it is the person with this account. */
  public boolean is(int accountId) {
    return account.isPresent() && account.get().id() == accountId;
  }

  /**
   * @throws NotAllowedException if a role is needed that the actor doesn't have
   */
  public void require(Role needed) {
    if (!role.allows(needed)) {
      throw new NotAllowedException(needed);
    }
  }

  /**
   * @throws NotAllowedException if there is none
   */
  public Account requireAccount() {
    return account.orElseThrow(() -> new NotAllowedException(Role.CONTRIBUTOR));
  }
}
