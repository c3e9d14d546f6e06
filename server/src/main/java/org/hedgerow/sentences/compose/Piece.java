package org.hedgerow.sentences.compose;

/**
 * A word of a sentence in the making.
 *
 * @param lemma the word that it is a form of; empty for words that only hold a sentence together
 * @param target whether it holds the phonogram that the sentence is for
 * @param sight whether it can only be read as a sight word
 */
record Piece(String text, String lemma, boolean target, boolean sight) {

  boolean isContent() {
    return !lemma.isEmpty();
  }
}
