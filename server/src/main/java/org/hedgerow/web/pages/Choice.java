package org.hedgerow.web.pages;

/** One thing to choose in a field of a form. */
record Choice(String value, String text, boolean chosen) {}
