package org.hedgerow.accounts;

/**
 * What is wrong with one thing that somebody gave.
 *
 * @param field {@code name}, {@code displayName}, {@code password} and the like
 * @param message what is wrong and what to do, for a teacher
 */
public record FieldFault(String field, String message) {}
