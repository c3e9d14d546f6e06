package org.hedgerow.sentences;

/**
 * A piece of a text.
 *
 * @param text as it was typed
 * @param start where it begins in the text, in UTF-16 units
 * @param end where it ends, after its last unit
 */
public record Token(String text, int start, int end, Kind kind) {

  /** What a token is. */
  public enum Kind {
    /** Letters of English, perhaps with an apostrophe within. */
    WORD,
    /** Digits. */
    NUMBER,
    /** A mark of punctuation. */
    MARK,
    /** Anything else: other scripts, symbols, emoji. */
    OTHER
  }
}
