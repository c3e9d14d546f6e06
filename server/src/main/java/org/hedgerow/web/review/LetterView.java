package org.hedgerow.web.review;

import java.util.List;

/**
 * One letter, with what it can belong to.
 *
 * @param caption what it says now
 * @param joined whether it belongs together with the letter before
 */
record LetterView(String letter, String caption, boolean joined, List<Option> options) {}
