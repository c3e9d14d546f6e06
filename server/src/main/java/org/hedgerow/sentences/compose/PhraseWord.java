package org.hedgerow.sentences.compose;

import java.util.Locale;

/**
 * A word of a sentence in the making.
 *
 * @param lemma the word that it is a form of; empty for words that only hold a sentence together
 * @param target whether it holds the phonogram that the sentence is for
 * @param sight whether it can only be read as a sight word
 */
record PhraseWord(String text, String lemma, boolean target, boolean sight) {

  /** The same with a comma after it. */
  PhraseWord withComma() {
    return new PhraseWord(text + ",", lemma, target, sight);
  }

  /** The word alone, in lower case. */
  String word() {
    String word = text.toLowerCase(Locale.ROOT);
    return word.endsWith(",") ? word.substring(0, word.length() - 1) : word;
  }

  boolean isContent() {
    return !lemma.isEmpty();
  }
}
