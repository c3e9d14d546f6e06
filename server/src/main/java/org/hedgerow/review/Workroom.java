package org.hedgerow.review;

import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import org.hedgerow.accounts.Actor;
import org.hedgerow.accounts.AuditEntry;
import org.hedgerow.accounts.NothingThereException;
import org.hedgerow.lexicon.Lexicon;

/**
 * What all verbs work with.
 *
 * @param newest the newest edition in memory
 * @param votes how many reviewers must approve
 * @param published told the number of every new edition, after its transaction
 */
record Workroom(
    ReviewBook book,
    Supplier<Lexicon> newest,
    IntSupplier votes,
    IntConsumer published,
    InstantSource clock) {

  <R> R inTransaction(Function<ReviewPage, R> work) {
    return book.inTransaction(work);
  }

  <R> R reading(Function<ReviewPage, R> work) {
    return book.reading(work);
  }

  /** As exactly as the database keeps it. */
  Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }

  Basis basis(ReviewPage page) {
    return new Basis(
        newest.get(),
        remembered(page.bank()::word),
        remembered(page.bank()::sentence),
        remembered(page.uploads()::find));
  }

  /** A verb asks for the same word several times, and nothing changes meanwhile. */
  private static <T> Function<String, Optional<T>> remembered(Function<String, Optional<T>> find) {
    Map<String, Optional<T>> found = new HashMap<>();
    return name -> found.computeIfAbsent(name, find);
  }

  /**
   * One that its author, or whoever asks, may see, to be changed.
   *
   * @throws NothingThereException if there is none, or it is another's draft
   */
  static Contribution lock(ReviewPage page, Actor actor, int id) {
    return visible(page.contributions().lock(id), actor);
  }

  static Contribution visible(Optional<Contribution> found, Actor actor) {
    return found
        .filter(each -> each.state() != State.DRAFT || actor.is(each.author().accountId()))
        .orElseThrow(() -> new NothingThereException("The contribution"));
  }

  void record(
      ReviewPage page,
      Actor actor,
      String action,
      Contribution about,
      Map<String, Object> before,
      Map<String, Object> after) {
    page.audit()
        .add(new AuditEntry(actor, now(), "contribution." + action, about.name(), before, after));
  }
}
