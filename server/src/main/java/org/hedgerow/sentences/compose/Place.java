package org.hedgerow.sentences.compose;

import java.util.Optional;

/**
 * Where something may be done.
 *
 * @param nouns before which the preposition makes sense here; empty for all that it goes with
 */
public record Place(String preposition, Optional<Selection> nouns) {

  public boolean allows(Noun noun) {
    return nouns
        .map(selection -> selection.allows(noun))
        .orElseGet(() -> noun.landmarks().contains(preposition));
  }
}
