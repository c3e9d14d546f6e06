package org.hedgerow.accounts;

import java.time.Instant;
import java.util.Optional;

/**
 * Which records are asked for; those that fit everything that is given.
 *
 * @param actor as {@link AuditRecord#actor()} has it
 * @param action how it begins, such as {@code account} or {@code account.made}
 * @param subject as {@link AuditRecord#subject()} has it
 * @param from the earliest time
 * @param to the time from which they are too late
 * @param below only those with a smaller number
 * @param limit how many at most
 */
public record AuditQuery(
    Optional<String> actor,
    Optional<String> action,
    Optional<String> subject,
    Optional<Instant> from,
    Optional<Instant> to,
    Optional<Long> below,
    int limit) {

  /** The newest of all. */
  public static AuditQuery newest(int limit) {
    return new AuditQuery(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        limit);
  }

  AuditQuery oneMore() {
    return new AuditQuery(actor, action, subject, from, to, below, limit + 1);
  }
}
