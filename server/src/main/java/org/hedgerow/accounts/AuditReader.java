package org.hedgerow.accounts;

import java.util.List;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.KeysetPage;
import org.hedgerow.operations.Role;

/** Reads the record of what was done; for administrators. */
public final class AuditReader {
  private final AccountRepository book;

  AuditReader(AccountRepository book) {
    this.book = book;
  }

  /** The newest first, as many as the query allows. */
  public KeysetPage<AuditRecord> find(Actor actor, AuditQuery query) {
    actor.require(Role.ADMINISTRATOR);
    List<AuditRecord> found = book.step(unit -> unit.trail().find(query.oneMore()));
    return KeysetPage.of(found, query.limit(), AuditRecord::id);
  }

  /** Every action that was ever recorded. */
  public List<String> actions(Actor actor) {
    actor.require(Role.ADMINISTRATOR);
    return book.step(page -> page.trail().actions());
  }
}
