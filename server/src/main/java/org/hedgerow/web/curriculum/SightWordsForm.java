package org.hedgerow.web.curriculum;

import java.util.List;
import java.util.Map;
import org.hedgerow.review.curriculum.SightWordsDraft;

/**
 * A set of sight words to be written.
 *
 * @param text its words as they were typed
 * @param seen the mark of what stands there; empty for a new one
 * @param isNew whether its name is to be chosen
 * @param former how it can be filled in as it was
 * @param conflict that somebody else was faster, or an empty text
 * @param errors by field
 * @param holding those of its words that hold phonograms
 */
record SightWordsForm(
    String token,
    SightWordsDraft draft,
    String text,
    String seen,
    boolean isNew,
    EarlierVersion former,
    String conflict,
    Map<String, String> errors,
    List<Holding> holding) {
  /**
   * @param phonograms with commas between, as in {@code oo 2}
   */
  record Holding(String word, String phonograms) {}

  String error(String field) {
    return errors.getOrDefault(field, "");
  }
}
