package org.hedgerow.accounts;

import java.time.Instant;

/**
 * Attempts to sign in that did not succeed.
 *
 * @param subject an account, a network or a device, or two of them
 */
public record FailedSignIns(String subject, int count, Instant last) {}
