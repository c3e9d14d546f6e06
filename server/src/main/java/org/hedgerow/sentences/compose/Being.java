package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Optional;

/** The forms of <em>be</em>. */
final class Being {

  private static final double NOW = 0.5;
  private static final double TO_COME = 0.1;

  /** Where <em>be</em> itself holds the phonogram. */
  private static final double TO_COME_WITH_TARGET = 0.5;

  private final Pantry pantry;
  private final Chance chance;
  private final Stock<Piece> toCome;

  Being(Pantry pantry, Chance chance) {
    this.pantry = pantry;
    this.chance = chance;
    this.toCome =
        new Stock<>(
            List.of(),
            pantry.words().modals().targets(),
            pantry.words().word("will").stream().toList());
  }

  /** Now, then or to come: <em>is, was, will be</em>. */
  Optional<Phrase> stated(Agreement agreement) {
    Optional<Phrase> toCome = toCome();
    double probability = toCome.map(Phrase::targets).orElse(0) > 0 ? TO_COME_WITH_TARGET : TO_COME;
    return chance.of(probability) ? toCome : form(agreement).map(Phrase::of);
  }

  private Optional<Phrase> toCome() {
    return toCome
        .draw(chance)
        .flatMap(modal -> pantry.words().word("be").map(be -> Phrase.of(modal, be)));
  }

  /** Now or then. */
  Optional<Piece> form(Agreement agreement) {
    return chance.of(NOW) ? present(agreement) : past(agreement);
  }

  private Optional<Piece> past(Agreement agreement) {
    return pantry.words().word(agreement == Agreement.OTHER ? "were" : "was");
  }

  private Optional<Piece> present(Agreement agreement) {
    return pantry
        .words()
        .word(
            switch (agreement) {
              case FIRST -> "am";
              case THIRD -> "is";
              case OTHER -> "are";
            });
  }
}
