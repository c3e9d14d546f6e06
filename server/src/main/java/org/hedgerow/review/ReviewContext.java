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
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.AuditEntry;
import org.hedgerow.operations.NotFoundException;

/**
 * What every review command needs: the repository, the newest edition, settings and the clock.
 *
 * @param newest the newest edition in memory
 * @param votes how many reviewers must approve
 * @param published told the number of every new edition, after its transaction
 */
public record ReviewContext(
    ReviewRepository book,
    Supplier<Lexicon> newest,
    IntSupplier votes,
    IntConsumer published,
    InstantSource clock) {

  public <R> R inTransaction(Function<ReviewUnitOfWork, R> work) {
    return book.inTransaction(work);
  }

  <R> R reading(Function<ReviewUnitOfWork, R> work) {
    return book.reading(work);
  }

  /** As exactly as the database keeps it. */
  public Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }

  BankSnapshot snapshot(ReviewUnitOfWork unit) {
    return new BankSnapshot(
        newest.get(),
        remembered(unit.bank()::word),
        remembered(unit.bank()::sentence),
        remembered(unit.uploads()::find));
  }

  /** A verb asks for the same word several times, and nothing changes meanwhile. */
  private static <T> Function<String, Optional<T>> remembered(Function<String, Optional<T>> find) {
    Map<String, Optional<T>> found = new HashMap<>();
    return name -> found.computeIfAbsent(name, find);
  }

  /**
   * One that its author, or whoever asks, may see, to be changed.
   *
   * @throws NotFoundException if there is none, or it is another's draft
   */
  static Contribution lock(ReviewUnitOfWork unit, Actor actor, int id) {
    return visible(unit.contributions().lock(id), actor);
  }

  static Contribution visible(Optional<Contribution> found, Actor actor) {
    return found
        .filter(
            each -> each.state() != ContributionState.DRAFT || actor.is(each.author().accountId()))
        .orElseThrow(() -> new NotFoundException("The contribution"));
  }

  void record(
      ReviewUnitOfWork unit,
      Actor actor,
      String action,
      Contribution about,
      Map<String, Object> before,
      Map<String, Object> after) {
    unit.audit()
        .add(new AuditEntry(actor, now(), "contribution." + action, about.name(), before, after));
  }
}
