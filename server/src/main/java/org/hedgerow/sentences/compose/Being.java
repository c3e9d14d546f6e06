package org.hedgerow.sentences.compose;

import java.util.Optional;

/** The forms of <em>be</em>. */
final class Being {

  private static final double NOW = 0.5;

  private final Pantry pantry;
  private final Chance chance;

  Being(Pantry pantry, Chance chance) {
    this.pantry = pantry;
    this.chance = chance;
  }

  /** Now or then. */
  Optional<Piece> form(Agreement agreement) {
    return chance.of(NOW) ? present(agreement) : past(agreement);
  }

  Optional<Piece> past(Agreement agreement) {
    return pantry.word(agreement == Agreement.OTHER ? "were" : "was");
  }

  private Optional<Piece> present(Agreement agreement) {
    return pantry.word(
        switch (agreement) {
          case FIRST -> "am";
          case THIRD -> "is";
          case OTHER -> "are";
        });
  }
}
