package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Optional;

/** The copula: the forms of <em>be</em>. */
final class Copula {

  private static final double NOW = 0.5;
  private static final double TO_COME = 0.1;

  /** Where <em>be</em> itself holds the phonogram. */
  private static final double TO_COME_WITH_TARGET = 0.5;

  private final ReadableWords readable;
  private final SeededRandom random;
  private final WordPool<PhraseWord> toCome;

  Copula(ReadableWords readable, SeededRandom random) {
    this.readable = readable;
    this.random = random;
    this.toCome =
        new WordPool<>(
            List.of(),
            readable.words().modals().targets(),
            readable.words().word("will").stream().toList());
  }

  /** Now, then or to come: <em>is, was, will be</em>. */
  Optional<Phrase> stated(Agreement agreement) {
    Optional<Phrase> toCome = toCome();
    double probability = toCome.map(Phrase::targets).orElse(0) > 0 ? TO_COME_WITH_TARGET : TO_COME;
    return random.of(probability) ? toCome : form(agreement).map(Phrase::of);
  }

  private Optional<Phrase> toCome() {
    return toCome
        .draw(random)
        .flatMap(modal -> readable.words().word("be").map(be -> Phrase.of(modal, be)));
  }

  /** Now or then. */
  Optional<PhraseWord> form(Agreement agreement) {
    return random.of(NOW) ? present(agreement) : past(agreement);
  }

  private Optional<PhraseWord> past(Agreement agreement) {
    return readable.words().word(agreement == Agreement.OTHER ? "were" : "was");
  }

  private Optional<PhraseWord> present(Agreement agreement) {
    return readable
        .words()
        .word(
            switch (agreement) {
              case FIRST -> "am";
              case THIRD -> "is";
              case OTHER -> "are";
            });
  }
}
