package org.hedgerow.web.review;

import java.util.List;

/**
 * What somebody proposes, to be looked at.
 *
 * @param subject the word or the sentence that it is about
 * @param picture the address of the picture, or an empty text
 */
record ProposalView(
    String kind,
    String subject,
    boolean ofWord,
    List<ShownPronunciation> sayings,
    List<Fact> facts,
    String picture,
    String note) {}
