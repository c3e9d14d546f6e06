package org.hedgerow.operations;

import java.time.Instant;
import java.util.Map;

/**
 * The record of one thing that was done. It never holds a secret.
 *
 * @param actor who did it
 * @param action a noun and a verb, such as {@code account.made}
 * @param subject what it was done to, such as {@code account 7}
 * @param before how it was, as far as it changed; JSON values
 * @param after how it is now
 */
public record AuditEntry(
    Actor actor,
    Instant at,
    String action,
    String subject,
    Map<String, Object> before,
    Map<String, Object> after) {
  public AuditEntry {
    before = Map.copyOf(before);
    after = Map.copyOf(after);
  }
}
