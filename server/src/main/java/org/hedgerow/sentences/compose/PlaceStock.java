package org.hedgerow.sentences.compose;

/** A preposition with the nouns that can stand after it. */
record PlaceStock(Piece preposition, Stock<NounForm> nouns) {}
