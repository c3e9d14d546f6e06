package org.hedgerow.web.sentences;

import java.util.List;
import org.hedgerow.web.page.FittingList;

/**
 * A sentence judged, or an empty field for one.
 *
 * @param verdict in words; empty where nothing was typed
 * @param kind pass, look, fail; empty where nothing was typed
 */
record SentenceCheckPage(
    SentenceFields fields,
    String text,
    String verdict,
    String kind,
    List<SentenceWord> words,
    List<String> reasons,
    List<Trouble> troubles) {

  /**
   * A word about which there is something to say.
   *
   * @param reasons in words
   * @param offer what the other words are
   * @param instead other words, each with the address of the sentence with it
   */
  record Trouble(String word, List<String> reasons, String offer, List<FittingList> instead) {}

  boolean isTyped() {
    return !text.isEmpty();
  }
}
