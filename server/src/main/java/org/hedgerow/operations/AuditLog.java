package org.hedgerow.operations;

/** Where the records of what was done are kept for good. */
@FunctionalInterface
public interface AuditLog {
  void add(AuditEntry entry);
}
