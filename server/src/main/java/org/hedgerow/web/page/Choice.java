package org.hedgerow.web.page;

/** One thing to choose in a field of a form. */
public record Choice(String value, String text, boolean chosen) {}
