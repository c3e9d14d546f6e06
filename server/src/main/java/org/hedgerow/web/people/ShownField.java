package org.hedgerow.web.people;

/**
 * How something was, and how it is since.
 *
 * @param before empty where it wasn't, or wasn't recorded
 * @param after the same
 */
record ShownField(String name, String before, String after) {}
