package org.hedgerow.web.words;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.page.LetterRun;

/**
 * A word in the list.
 *
 * @param address the same page with this word looked at closely
 * @param picture the address of its picture, if it has one
 * @param current whether it is looked at now
 */
record WordTag(
    String spelling,
    List<LetterRun> pieces,
    String address,
    Optional<String> picture,
    boolean current) {}
