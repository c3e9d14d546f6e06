package org.hedgerow.web.people;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.KeysetPage;

/**
 * Some of the accounts, by name.
 *
 * @param next the last name; none at the end of the list
 */
record PeopleView(List<PersonView> people, Optional<String> next) {

  static PeopleView of(List<Account> accounts, Optional<String> after, int limit) {
    List<PersonView> rest =
        accounts.stream()
            .sorted(Comparator.comparing(Account::name))
            .filter(account -> after.map(name -> account.name().compareTo(name) > 0).orElse(true))
            .map(PersonView::of)
            .toList();
    KeysetPage<PersonView> page = KeysetPage.of(rest, limit, PersonView::name);
    return new PeopleView(page.items(), page.next());
  }
}
