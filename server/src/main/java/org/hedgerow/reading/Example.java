package org.hedgerow.reading;

/**
 * A word that shows a reading rule at work.
 *
 * @param word the spelling
 * @param arpabet how it is said in General American
 * @param target the phonogram value it is measured for, such as {@code oo 2}; or an empty text
 * @param found whether the rule finds something in it
 */
public record Example(String word, String arpabet, String target, boolean found) {

  static Example finds(String word, String arpabet, String target) {
    return new Example(word, arpabet, target, true);
  }

  static Example leaves(String word, String arpabet, String target) {
    return new Example(word, arpabet, target, false);
  }
}
