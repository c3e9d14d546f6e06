package org.hedgerow.web.review;

/**
 * Letters that belong together, and what they say.
 *
 * @param letters as in lists: {@code oa}, {@code i-e}
 * @param words how it is heard
 * @param ipa the same in the phonetic alphabet; empty where nothing is heard
 * @param example a word in which the letters say so, or an empty text
 * @param phonogram whether it is taught on its own
 * @param known whether the catalogue has it
 */
record LetterGroupView(
    String letters, String words, String ipa, String example, boolean phonogram, boolean known) {}
