package org.hedgerow.lexicon;

import java.util.Comparator;

/** What the tags of a word say about pictures. */
final class Picturability {

  /** The words that can be drawn best first, then as they stood. */
  static final Comparator<Word> MOST_PICTURABLE_FIRST =
      Comparator.comparingInt(Picturability::of).reversed();

  private Picturability() {}

  /** From 0 to 3; 0 where nobody has said. */
  private static int of(Word word) {
    return word.picturable().orElse(0);
  }

  static boolean isDrawable(Word word) {
    return of(word) >= TagFilter.DRAWABLE;
  }

  static boolean hasPicture(Word word) {
    return word.is(Tag.PICTURE);
  }
}
