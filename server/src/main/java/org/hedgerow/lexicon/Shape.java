package org.hedgerow.lexicon;

import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;

/** The consonant and vowel shape of a word, one letter for each grapheme that has a sound. */
public final class Shape {

  /** What a shape looks like: {@code cvc}, {@code ccvcc}. */
  public static final String FORM = "[cv]{1,8}";

  private Shape() {}

  /** The shape of an alignment: <em>duck</em> and <em>box</em> are {@code cvc}. */
  public static String of(Alignment alignment) {
    StringBuilder shape = new StringBuilder();
    for (Span span : alignment.spans()) {
      if (!span.sounds().isEmpty()) {
        shape.append(span.sounds().stream().anyMatch(Sound::vowel) ? 'v' : 'c');
      }
    }
    return shape.toString();
  }
}
