package org.hedgerow.web.sentences;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.page.OldEdition;

/**
 * The sentences of the bank that were asked for.
 *
 * @param word only those with it; empty for all
 * @param total how many there are
 * @param old where an older edition is shown
 */
record SentenceListPage(
    SentenceFields fields, String word, int total, List<Line> lines, Optional<OldEdition> old) {

  /** How many are shown at once. */
  static final int MAX = 60;

  /**
   * @param topic what it is for, as in {@code oa as in boat}
   */
  record Line(List<SentenceWord> words, String text, String topic) {}

  /** All of them as plain text, a line each. */
  String plain() {
    return String.join("\n", lines.stream().map(Line::text).toList());
  }
}
