package org.hedgerow.web.review;

/** Something that is one way there and another way here; an empty text where it is nothing. */
record Difference(String name, String there, String here) {}
