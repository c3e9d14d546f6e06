package org.hedgerow.sentences.compose;

import java.util.Set;

/**
 * What sentences are wanted.
 *
 * @param count how many
 * @param seed the same seed gives the same sentences
 * @param mustUse words in lower case that each sentence must hold, as they stand or in another form
 * @param kinds what they may do; at least one
 */
public record CompositionRequest(
    int count, long seed, Set<String> mustUse, Set<SentenceKind> kinds) {

  public CompositionRequest {
    mustUse = Set.copyOf(mustUse);
    kinds = Set.copyOf(kinds);
    if (count < 1 || kinds.isEmpty()) {
      throw new IllegalArgumentException("nothing can be made for this order");
    }
  }
}
