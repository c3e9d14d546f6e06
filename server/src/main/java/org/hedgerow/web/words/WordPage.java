package org.hedgerow.web.words;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.page.FittingList;
import org.hedgerow.web.page.OldEdition;
import org.hedgerow.web.page.ShownPicture;
import org.hedgerow.web.page.SpokenWord;
import org.hedgerow.web.page.WordFinding;
import org.hedgerow.web.view.EditionLine;

/**
 * The page of a word.
 *
 * @param isKnown whether the bank holds it; if not, its sounds are a guess
 * @param near words that are perhaps meant
 * @param accents the names of the accents in which it is judged; its sounds are of the first
 * @param accentTag the first of them
 * @param others the same page for other accents
 * @param picture what it looks like, if there is a picture
 * @param facts what is known of it, in sentences
 * @param fits the lists it stands in
 * @param reasons why it is in no list without a phonogram; empty if it is
 * @param history the editions that changed it, the newest first
 * @param old where it is as it stood in an old edition
 */
record WordPage(
    String spelling,
    boolean isKnown,
    List<FittingList> near,
    String accents,
    String accentTag,
    List<FittingList> others,
    List<SpokenWord> ways,
    Optional<ShownPicture> picture,
    List<String> facts,
    List<FittingList> fits,
    List<WordFinding> reasons,
    List<EditionLine> history,
    Optional<OldEdition> old) {}
