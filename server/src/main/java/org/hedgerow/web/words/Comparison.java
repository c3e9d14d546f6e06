package org.hedgerow.web.words;

import java.util.List;
import org.hedgerow.web.page.Choice;

/**
 * The same list in two accents.
 *
 * @param topic what the list is about, in words
 * @param left the accent on the left, with the words that only it has
 * @param shared the words that both have
 * @param hidden the parameters of the list, which the form sends again
 * @param advice what to do where there is nothing to compare; else an empty text
 */
record Comparison(
    String topic,
    Side left,
    Side right,
    List<WordTag> shared,
    List<Choice> hidden,
    String list,
    String advice) {

  /** A longer page helps nobody. */
  static final int MAX = 200;

  /**
   * @param other the name of the other accent
   * @param accents the accents to choose from
   * @param total how many words its list has
   * @param only how many of them the other hasn't
   * @param differences those of them that are shown
   */
  record Side(
      String name,
      String other,
      List<Choice> accents,
      int total,
      int only,
      List<AccentDifference> differences) {
    boolean isCut() {
      return differences.size() < only;
    }
  }

  boolean isAlike() {
    return left.only() == 0 && right.only() == 0;
  }
}
