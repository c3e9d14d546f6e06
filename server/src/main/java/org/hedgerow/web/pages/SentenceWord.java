package org.hedgerow.web.pages;

import java.util.List;

/**
 * A word, a number or a mark of a sentence, as it is shown.
 *
 * @param pieces its letters, those of the phonogram apart
 * @param kind what it is, for the style: {@code target, phonetic, sight-word, taught, blocked};
 *     {@code mark} for marks, {@code other} for what is no word
 * @param caption what it is, in words; empty for marks
 * @param spaced whether a space stands before it
 */
record SentenceWord(List<Piece> pieces, String kind, String caption, boolean spaced) {}
