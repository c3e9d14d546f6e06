package org.hedgerow.web.review;

import java.util.List;

/**
 * What the machine says beside a form.
 *
 * @param verdict {@code pass}, {@code look}, {@code fail}, or an empty text while something is
 *     missing
 * @param headline the verdict in words
 * @param missing what is to be said or put right before it can be sent
 * @param serves lists that would gain by it
 * @param others that wait for a decision about the same
 */
record DraftVerdict(
    boolean saved,
    Times at,
    String verdict,
    String headline,
    List<FindingView> reasons,
    List<String> missing,
    List<String> serves,
    List<OtherView> others) {}
