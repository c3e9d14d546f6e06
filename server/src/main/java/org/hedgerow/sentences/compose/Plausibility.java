package org.hedgerow.sentences.compose;

import java.util.List;

/** How likely sentences are in English. */
@FunctionalInterface
public interface Plausibility {

  /** Where nothing is known of what people write. */
  Plausibility UNKNOWN = words -> 0;

  /**
   * @param words in lower case, without marks; at least one
   * @return the logarithm to base 10 of the probability, over the number of words; the higher the
   *     likelier
   */
  double perWord(List<String> words);
}
