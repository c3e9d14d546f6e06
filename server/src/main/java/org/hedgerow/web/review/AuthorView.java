package org.hedgerow.web.review;

import org.hedgerow.review.Person;

/**
 * Whoever contributed or decided.
 *
 * @param id of their account
 * @param name what others see of them
 */
record AuthorView(int id, String name) {
  static AuthorView of(Person person) {
    return new AuthorView(person.accountId(), person.name());
  }
}
