package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Set;

/**
 * What came of an order.
 *
 * @param sentences the best first; fewer than were wanted where English has no more
 * @param ranked of how many they were chosen
 * @param targets the words with the phonogram that could be used, as a dictionary has them
 */
public record ComposedSentences(List<ComposedSentence> sentences, int ranked, Set<String> targets) {

  public ComposedSentences {
    sentences = List.copyOf(sentences);
    targets = Set.copyOf(targets);
  }
}
