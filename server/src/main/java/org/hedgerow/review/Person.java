package org.hedgerow.review;

import org.hedgerow.operations.Account;

/**
 * Whoever contributed or decided.
 *
 * @param accountId of their account
 * @param name what others see of them, in any script
 */
public record Person(int accountId, String name) {
  static Person of(Account account) {
    return new Person(account.id(), account.displayName());
  }
}
