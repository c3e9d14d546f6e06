package org.hedgerow.web.problems;

/**
 * What is wrong with one parameter or one place in a body.
 *
 * @param parameter its name, or the path to it in the body, such as {@code words[2]}
 * @param detail what is wrong and what to do, for a teacher
 */
public record ParameterError(String parameter, String detail) {}
