package org.hedgerow.accounts;

import java.util.List;
import java.util.stream.IntStream;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.AuditEntry;

/** Reads a record that is kept in memory, the first entry having the number 1. */
record MemoryTrail(List<AuditEntry> entries) implements AuditTrail {

  @Override
  public List<AuditRecord> find(AuditQuery query) {
    return IntStream.iterate(entries.size(), number -> number > 0, number -> number - 1)
        .mapToObj(number -> record(number, entries.get(number - 1)))
        .filter(each -> query.actor().map(each.actor()::equals).orElse(true))
        .filter(each -> query.action().map(each.action()::startsWith).orElse(true))
        .filter(each -> query.subject().map(each.subject()::equals).orElse(true))
        .filter(each -> query.from().map(from -> !each.at().isBefore(from)).orElse(true))
        .filter(each -> query.to().map(each.at()::isBefore).orElse(true))
        .filter(each -> query.below().map(below -> each.id() < below).orElse(true))
        .limit(query.limit())
        .toList();
  }

  private static AuditRecord record(int number, AuditEntry entry) {
    return new AuditRecord(
        number,
        entry.at(),
        entry.actor().account().map(Account::id),
        entry.actor().name(),
        entry.action(),
        entry.subject(),
        entry.before(),
        entry.after());
  }

  @Override
  public List<String> actions() {
    return entries.stream().map(AuditEntry::action).distinct().sorted().toList();
  }
}
