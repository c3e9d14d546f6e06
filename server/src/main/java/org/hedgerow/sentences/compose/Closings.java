package org.hedgerow.sentences.compose;

/** Ends sentences with a time or the weather where that holds the phonogram. */
final class Closings {

  private static final double CLOSED = 0.4;

  private final ReadableWords readable;
  private final SeededRandom random;

  Closings(ReadableWords readable, SeededRandom random) {
    this.readable = readable;
    this.random = random;
  }

  /**
   * Often empty.
   *
   * @param after what the sentence says so far
   */
  Phrase draw(Closing.After after) {
    return random.of(CLOSED)
        ? random.among(readable.words().closings(after).targets()).orElse(Phrase.EMPTY)
        : Phrase.EMPTY;
  }
}
