package org.hedgerow.web.api.review;

import org.hedgerow.review.Person;

/**
 * Whoever contributed or decided.
 *
 * @param id of their account
 * @param name what others see of them
 */
record PersonView(int id, String name) {
  static PersonView of(Person person) {
    return new PersonView(person.accountId(), person.name());
  }
}
