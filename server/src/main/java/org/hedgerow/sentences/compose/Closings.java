package org.hedgerow.sentences.compose;

/** Ends sentences now and then with a time or with the weather. */
final class Closings {

  private static final double CLOSED = 0.04;
  private static final double CLOSED_BY_TARGET = 0.4;

  private final Pantry pantry;
  private final Chance chance;

  Closings(Pantry pantry, Chance chance) {
    this.pantry = pantry;
    this.chance = chance;
  }

  /**
   * Mostly empty, but where a closing holds the phonogram.
   *
   * @param after what the sentence says so far
   */
  Phrase draw(Closing.After after) {
    Stock<Phrase> all = pantry.closings(after);
    return chance.of(all.targets().isEmpty() ? CLOSED : CLOSED_BY_TARGET)
        ? all.draw(chance, any -> true).orElse(Phrase.EMPTY)
        : Phrase.EMPTY;
  }
}
