package org.hedgerow.sentences.compose;

/** Ends sentences with a time or the weather where that holds the phonogram. */
final class Closings {

  private static final double CLOSED = 0.4;

  private final ReadableWords pantry;
  private final SeededRandom chance;

  Closings(ReadableWords pantry, SeededRandom chance) {
    this.pantry = pantry;
    this.chance = chance;
  }

  /**
   * Often empty.
   *
   * @param after what the sentence says so far
   */
  Phrase draw(Closing.After after) {
    return chance.of(CLOSED)
        ? chance.among(pantry.words().closings(after).targets()).orElse(Phrase.EMPTY)
        : Phrase.EMPTY;
  }
}
