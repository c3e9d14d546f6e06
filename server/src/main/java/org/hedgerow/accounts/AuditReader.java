package org.hedgerow.accounts;

import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;

/** Reads the record of what was done; for administrators. */
public final class AuditReader {
  /**
   * Part of what was asked for.
   *
   * @param next below which number it goes on; none at its end
   */
  public record Slice(List<AuditRecord> records, Optional<Long> next) {}

  private final AccountRepository book;

  AuditReader(AccountRepository book) {
    this.book = book;
  }

  /** The newest first, as many as the query allows. */
  public Slice find(Actor actor, AuditQuery query) {
    actor.require(Role.ADMINISTRATOR);
    List<AuditRecord> found = book.step(page -> page.trail().find(query.oneMore()));
    if (found.size() <= query.limit()) {
      return new Slice(found, Optional.empty());
    }
    List<AuditRecord> shown = List.copyOf(found.subList(0, query.limit()));
    return new Slice(shown, Optional.of(shown.get(shown.size() - 1).id()));
  }

  /** Every action that was ever recorded. */
  public List<String> actions(Actor actor) {
    actor.require(Role.ADMINISTRATOR);
    return book.step(page -> page.trail().actions());
  }
}
