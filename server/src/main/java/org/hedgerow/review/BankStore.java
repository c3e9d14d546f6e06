package org.hedgerow.review;

import java.time.Instant;
import java.util.Optional;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.Actor;

/** The bank as it stands, within a transaction. */
public interface BankStore {
  /**
   * Makes others who want to publish wait until this transaction ends. To be called before anything
   * is read that a publication depends on.
   */
  void lock();

  /** A word as it stands now. */
  Optional<Word> word(String spelling);

  /** A word as it stood in an edition. */
  Optional<Word> word(String spelling, int edition);

  /** A sentence as it stands now. */
  Optional<Sentence> sentence(String text);

  /** A sentence as it stood in an edition. */
  Optional<Sentence> sentence(String text, int edition);

  /**
   * Makes the next edition.
   *
   * @param summary for people
   * @param at when it is published
   * @return its number
   */
  int publish(Change change, String summary, Actor by, int contributionId, Instant at);
}
