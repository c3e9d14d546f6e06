package org.hedgerow.sentences.compose;

import java.util.Optional;

/**
 * Where something may be done.
 *
 * @param nouns before which the preposition makes sense here; empty for all that it makes places of
 */
public record PlacePhrase(String preposition, Optional<Selection> nouns) {}
