package org.hedgerow.sentences.compose;

/** A preposition with the nouns that can stand after it. */
record ReadablePlace(PhraseWord preposition, WordPool<NounForm> nouns) {}
