package org.hedgerow.accounts;

import java.time.InstantSource;
import java.util.Map;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.AuditEntry;
import org.hedgerow.operations.AuditLog;

/** Writes records of what is done, in the transaction that does it. */
record Audit(AuditLog log, InstantSource clock) {

  static Audit of(AccountUnitOfWork unit, InstantSource clock) {
    return new Audit(unit.audit(), clock);
  }

  static String account(Account account) {
    return "account " + account.id();
  }

  void add(Actor actor, String action, String subject, Map<String, Object> after) {
    add(actor, action, subject, Map.of(), after);
  }

  void add(
      Actor actor,
      String action,
      String subject,
      Map<String, Object> before,
      Map<String, Object> after) {
    log.add(new AuditEntry(actor, clock.instant(), action, subject, before, after));
  }
}
