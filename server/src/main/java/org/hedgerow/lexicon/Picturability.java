package org.hedgerow.lexicon;

import java.util.Comparator;

/** What the tags of a word say about pictures and the starter set. */
final class Picturability {

  /** The words that can be drawn best first, then as they stood. */
  static final Comparator<Word> MOST_PICTURABLE_FIRST =
      Comparator.comparingInt(Picturability::of).reversed();

  private static final int DRAWABLE = 2;

  private Picturability() {}

  /** From 0 to 3; 0 where nobody has said. */
  private static int of(Word word) {
    return word.tag("picturable").map(tag -> Integer.valueOf(tag.value())).orElse(0);
  }

  static boolean isDrawable(Word word) {
    return of(word) >= DRAWABLE;
  }

  static boolean hasPicture(Word word) {
    return word.is("picture");
  }

  static boolean isStarter(Word word) {
    return word.is("starter");
  }
}
