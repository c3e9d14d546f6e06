package org.hedgerow.store.review;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.review.BankStore;
import org.hedgerow.review.Change;
import org.hedgerow.store.editions.EditionWriter;
import org.hedgerow.store.editions.PictureWriter;
import org.hedgerow.store.editions.SentenceWriter;
import org.jdbi.v3.core.Handle;

/** The bank as somebody's transaction sees and changes it. */
record JdbiBank(Handle handle, List<AccentCatalogue> accents) implements BankStore {
  private EditionWriter editions() {
    return new EditionWriter(handle, accents);
  }

  private SentenceWriter sentences() {
    return new SentenceWriter(handle, accents.get(0).catalogue());
  }

  @Override
  public void lock() {
    editions().lock();
  }

  @Override
  public Optional<Word> word(String spelling) {
    return editions().current(spelling);
  }

  @Override
  public Optional<Word> word(String spelling, int edition) {
    return editions().at(spelling, edition);
  }

  @Override
  public Optional<Sentence> sentence(String text) {
    return sentences().current(text);
  }

  @Override
  public Optional<Sentence> sentence(String text, int edition) {
    return sentences().at(text, edition);
  }

  @Override
  public int publish(Change change, String summary, Actor by, int contributionId, Instant at) {
    EditionWriter editions = editions();
    int edition = editions.publish(summary, account(by), OptionalInt.of(contributionId), at);
    editions.replace(change.words(), edition);
    change.withdrawnWords().forEach(spelling -> editions.withdraw(spelling, edition));
    change.pictures().forEach(picture -> new PictureWriter(handle).add(picture, edition));
    change.sentences().forEach(sentence -> sentences().add(sentence, edition));
    change.withdrawnSentences().forEach(text -> sentences().withdraw(text, edition));
    return edition;
  }

  private static OptionalInt account(Actor actor) {
    return actor.account().map(Account::id).map(OptionalInt::of).orElseGet(OptionalInt::empty);
  }
}
