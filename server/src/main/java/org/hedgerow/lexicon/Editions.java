package org.hedgerow.lexicon;

import java.util.Optional;
import java.util.function.Consumer;

/** The editions of a bank. Thread-safe. */
public interface Editions {

  /** The newest edition; never waits for a newer one that is being made. */
  Lexicon newest();

  /** An edition by its number; empty if there is no such one. */
  Optional<Lexicon> at(int number);

  /**
   * Shows somebody each new edition before it is the newest, from now on. They should be quick: it
   * is only answered when they are done. Editions that don't know what comes next show nothing.
   */
  default void beforeEach(Consumer<Lexicon> preparation) {}

  /** What is recorded of them. */
  EditionLog log();

  /** Nothing but one edition. */
  static Editions only(Lexicon lexicon) {
    return new Editions() {
      @Override
      public Lexicon newest() {
        return lexicon;
      }

      @Override
      public Optional<Lexicon> at(int number) {
        return Optional.of(lexicon).filter(each -> each.edition() == number);
      }

      @Override
      public EditionLog log() {
        return EditionLog.NONE;
      }
    };
  }
}
