package org.hedgerow.web.pages;

/** A list that a word fits. */
record Fit(String name, String address) {}
