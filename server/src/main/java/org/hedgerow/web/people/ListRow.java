package org.hedgerow.web.people;

/**
 * Something in a list, with its number to do something about it.
 *
 * @param note in smaller letters
 * @param current whether it is the one at hand
 */
record ListRow(int id, String text, String note, boolean current) {}
