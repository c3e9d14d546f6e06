package org.hedgerow.web.people;

import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.ApiToken;
import org.hedgerow.accounts.Link;
import org.hedgerow.accounts.Session;
import org.hedgerow.operations.Account;

/** Lists for people. */
final class ListRows {
  private ListRows() {}

  static List<ListRow> sessions(List<Session> sessions, Optional<Integer> current) {
    return sessions.stream()
        .map(
            session ->
                new ListRow(
                    session.id(),
                    session.client().isEmpty() ? "An unnamed browser" : session.client(),
                    "Since %s, last used %s"
                        .formatted(Dates.of(session.startedAt()), Dates.of(session.seenAt())),
                    current.equals(Optional.of(session.id()))))
        .toList();
  }

  static List<ListRow> tokens(List<ApiToken> tokens) {
    return tokens.stream()
        .map(
            token ->
                new ListRow(
                    token.id(),
                    token.label(),
                    "%s, until %s, %s"
                        .formatted(
                            token.role().label(),
                            Dates.of(token.expiresAt()),
                            token
                                .usedAt()
                                .map(used -> "last used " + Dates.of(used))
                                .orElse("never used")),
                    false))
        .toList();
  }

  static List<ListRow> links(List<Link> links) {
    return links.stream()
        .map(
            link ->
                new ListRow(
                    link.id(),
                    "%s: %s".formatted(link.purpose().label(), link.role().label()),
                    "Made by %s, until %s".formatted(link.madeBy(), Dates.of(link.expiresAt())),
                    false))
        .toList();
  }

  static List<ListRow> accounts(List<Account> accounts) {
    return accounts.stream()
        .map(
            account ->
                new ListRow(
                    account.id(),
                    account.displayName(),
                    "%s, %s%s"
                        .formatted(
                            account.name(),
                            account.role().label(),
                            account.active() ? "" : ", may not sign in"),
                    false))
        .toList();
  }
}
