package org.hedgerow.accounts;

import java.time.Instant;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One thing that was done, as it stands in the record.
 *
 * @param id counts up
 * @param accountId of whoever did it; none for those without an account
 * @param actor who did it, as it was called then
 * @param action a noun and a verb, such as {@code account.made}
 * @param subject what it was done to, such as {@code account 7}
 * @param before how it was, as far as it changed; JSON values by field
 * @param after how it was then
 */
public record AuditRecord(
    long id,
    Instant at,
    Optional<Integer> accountId,
    String actor,
    String action,
    String subject,
    Map<String, Object> before,
    Map<String, Object> after) {
  public AuditRecord {
    before = Collections.unmodifiableMap(new TreeMap<>(before));
    after = Collections.unmodifiableMap(new TreeMap<>(after));
  }
}
