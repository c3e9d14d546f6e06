package org.hedgerow.web.curriculum;

import java.util.List;
import org.hedgerow.review.curriculum.SightWordsDraft;

/**
 * A set of sight words to be written.
 *
 * @param text its words as they were typed
 * @param holding those of its words that hold phonograms
 */
record SightWordsForm(SetForm<SightWordsDraft> set, String text, List<Holding> holding) {
  /**
   * @param phonograms with commas between, as in {@code oo 2}
   */
  record Holding(String word, String phonograms) {}
}
