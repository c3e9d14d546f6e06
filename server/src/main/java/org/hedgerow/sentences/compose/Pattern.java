package org.hedgerow.sentences.compose;

import java.util.Optional;

/** A way to build sentences of a kind. Each call makes another one by random, or none. */
@FunctionalInterface
interface Pattern {

  Optional<Phrase> make();
}
