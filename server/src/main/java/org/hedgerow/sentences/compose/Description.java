package org.hedgerow.sentences.compose;

/** An adjective as a word that can be read. */
record Description(Adjective adjective, PhraseWord piece) {}
