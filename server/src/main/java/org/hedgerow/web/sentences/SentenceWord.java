package org.hedgerow.web.sentences;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.web.page.LetterRun;

/**
 * A word, a number or a mark of a sentence, as it is shown.
 *
 * @param pieces its letters, those of the phonogram apart
 * @param kind what it is, for the style: {@code target, phonetic, sight-word, taught, blocked};
 *     {@code mark} for marks, {@code other} for what is no word
 * @param caption what it is, in words; empty for marks
 * @param spaced whether a space stands before it
 */
record SentenceWord(List<LetterRun> pieces, String kind, String caption, boolean spaced) {

  /** Each with what follows it without a space, so that no line begins with a full stop. */
  static List<List<SentenceWord>> together(List<SentenceWord> words) {
    List<List<SentenceWord>> groups = new ArrayList<>();
    for (SentenceWord word : words) {
      if (word.spaced() || groups.isEmpty()) {
        groups.add(new ArrayList<>());
      }
      groups.get(groups.size() - 1).add(word);
    }
    return groups;
  }
}
