package org.hedgerow.web.curriculum;

/**
 * How a form can be filled in as an earlier edition had the set.
 *
 * @param notice that it is filled in so, or an empty text
 * @param action address of the form
 * @param name of the set
 * @param newest the newest edition
 */
record EarlierVersion(String notice, String action, String name, int newest) {}
