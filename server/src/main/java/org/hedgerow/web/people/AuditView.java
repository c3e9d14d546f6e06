package org.hedgerow.web.people;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.accounts.AuditRecord;
import org.hedgerow.operations.KeysetPage;

/** Some of the record of what was done. */
record AuditView(List<Entry> records, Optional<String> next) {

  /**
   * One thing that was done.
   *
   * @param account number of the account of whoever did it
   */
  record Entry(
      long id,
      Instant at,
      String actor,
      Optional<Integer> account,
      String action,
      String subject,
      Map<String, Object> before,
      Map<String, Object> after) {

    public static Entry of(AuditRecord record) {
      return new Entry(
          record.id(),
          record.at(),
          record.actor(),
          record.accountId(),
          record.action(),
          record.subject(),
          record.before(),
          record.after());
    }
  }

  static AuditView of(KeysetPage<AuditRecord> found) {
    return new AuditView(found.map(Entry::of).items(), found.next());
  }
}
