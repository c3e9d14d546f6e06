package org.hedgerow.web.words;

import java.util.List;
import java.util.Optional;
import org.hedgerow.reading.Verdict;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.FittingList;
import org.hedgerow.web.page.LetterRun;
import org.hedgerow.web.page.SpokenWord;
import org.hedgerow.web.page.WordFinding;

/**
 * The part of the page in which a word is looked at closely.
 *
 * @param typed what stands in the field
 * @param error what is wrong with it, or an empty text
 * @param word empty as long as nobody asked
 * @param hidden the parameters of the list, which the form sends again
 * @param close the list without the word
 */
public record WordPanel(
    String typed, String error, Optional<LookedAt> word, List<Choice> hidden, String close) {

  /**
   * A word, looked at.
   *
   * @param headline the verdict in words
   * @param note what else a teacher should know, or an empty text
   * @param fits other lists that it fits
   * @param near words of the bank that are perhaps meant
   * @param address of its own page; empty if the bank doesn't hold it
   */
  record LookedAt(
      String spelling,
      List<LetterRun> pieces,
      Verdict verdict,
      String headline,
      List<WordFinding> reasons,
      String note,
      List<SpokenWord> ways,
      List<FittingList> fits,
      List<FittingList> near,
      Optional<String> address) {}
}
