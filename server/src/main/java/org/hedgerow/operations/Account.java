package org.hedgerow.operations;

import java.time.Instant;

/**
 * Somebody who may do more than read.
 *
 * @param name what they sign in with, in lower case
 * @param displayName what others see, in any script
 * @param role never {@link Role#VISITOR}
 * @param active whether they may sign in
 * @param since when it was made
 */
public record Account(
    int id, String name, String displayName, Role role, boolean active, Instant since) {}
