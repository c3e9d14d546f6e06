package org.hedgerow.lexicon;

import java.util.List;
import java.util.Optional;

/** The record of editions: when each was published, by whom, and what it changed. Thread-safe. */
public interface EditionLog {

  /** Where nothing is recorded. */
  EditionLog NONE =
      new EditionLog() {
        @Override
        public List<PublishedEdition> before(int number, int most) {
          return List.of();
        }

        @Override
        public Optional<PublishedEdition> edition(int number) {
          return Optional.empty();
        }

        @Override
        public List<WordChange> changes(int number) {
          return List.of();
        }

        @Override
        public List<PublishedEdition> ofWord(String spelling, int newest) {
          return List.of();
        }
      };

  /** So many editions before one, the newest first. */
  List<PublishedEdition> before(int number, int most);

  Optional<PublishedEdition> edition(int number);

  /** What an edition changed, by alphabet; nothing for the first. */
  List<WordChange> changes(int number);

  /**
   * The editions that changed a word, the newest first; not the first edition.
   *
   * @param newest the last edition to look at
   */
  List<PublishedEdition> ofWord(String spelling, int newest);
}
