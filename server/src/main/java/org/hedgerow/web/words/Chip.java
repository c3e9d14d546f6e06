package org.hedgerow.web.words;

/**
 * A choice that narrows or widens the list.
 *
 * @param address the same list without it
 */
record Chip(String text, String address) {}
