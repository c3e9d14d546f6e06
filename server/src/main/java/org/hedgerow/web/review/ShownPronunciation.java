package org.hedgerow.web.review;

import java.util.List;

/**
 * How a word is said, to be looked at.
 *
 * @param accent its name
 * @param obstacle why the letters can't be matched to the sounds; empty where they are
 */
record ShownPronunciation(
    String accent, String ipa, List<LetterGroupView> pieces, String obstacle) {}
