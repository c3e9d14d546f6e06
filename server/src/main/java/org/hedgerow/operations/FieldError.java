package org.hedgerow.operations;

/**
 * A validation error of one field.
 *
 * @param field {@code name}, {@code displayName}, {@code password} and the like
 * @param message what is wrong and what to do, for a teacher
 */
public record FieldError(String field, String message) {}
