package org.hedgerow.accounts;

import java.util.List;

/** Reads the record of what was done, within a transaction. */
public interface AuditTrail {
  /** The newest first. */
  List<AuditRecord> find(AuditQuery query);

  /** Every action that was ever recorded, each once, in the order of letters. */
  List<String> actions();
}
