package org.hedgerow.accounts;

import java.time.Instant;

/**
 * Attempts to sign in that did not succeed.
 *
 * @param subject an account's name or a network address
 */
public record Failures(String subject, int count, Instant last) {}
