package org.hedgerow.web.review;

/** Something with its name, in words. */
record Fact(String name, String text) {}
