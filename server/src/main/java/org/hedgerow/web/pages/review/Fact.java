package org.hedgerow.web.pages.review;

/** Something with its name, in words. */
record Fact(String name, String text) {}
