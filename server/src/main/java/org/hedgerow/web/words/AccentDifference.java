package org.hedgerow.web.words;

import java.util.List;
import org.hedgerow.web.page.LetterRun;

/**
 * A word that stands in the list of one accent and not in that of the other.
 *
 * @param reasons why not in the other, in sentences
 */
record AccentDifference(List<LetterRun> word, String address, String reasons) {}
