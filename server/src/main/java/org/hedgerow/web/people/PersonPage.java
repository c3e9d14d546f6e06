package org.hedgerow.web.people;

import java.util.List;
import org.hedgerow.operations.Account;

/**
 * One account, as an administrator sees it.
 *
 * @param shown a link that has just been made
 */
record PersonPage(
    Form form,
    Account account,
    RevealedSecret shown,
    List<ListRow> sessions,
    List<ListRow> tokens) {
  String role() {
    return account.role().label();
  }

  String since() {
    return Dates.of(account.since());
  }
}
