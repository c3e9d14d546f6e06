package org.hedgerow.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.hedgerow.accounts.SettableClock;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.BeforeEach;

/** What the tests of review have in common, wherever it is kept: the people and what they do. */
public abstract class ReviewContract {
  final SettableClock clock = new SettableClock();
  final List<Integer> published = Collections.synchronizedList(new ArrayList<>());
  int votes = 1;
  ReviewRecords records;
  ReviewServices services;
  Actor nora;
  Actor ivan;
  Actor mei;
  Actor otto;
  private int words;

  /** Empty ones for each test. */
  protected abstract ReviewRecords records();

  @BeforeEach
  void open() {
    records = records();
    services =
        ReviewServices.of(records.book(), SeededLexicon::get, () -> votes, published::add, clock);
    nora = Actor.of(records.account("nora", "Нора Ильина", Role.CONTRIBUTOR));
    ivan = Actor.of(records.account("ivan", "Iván", Role.CONTRIBUTOR));
    mei = Actor.of(records.account("mei", "美", Role.REVIEWER));
    otto = Actor.of(records.account("otto", "نور", Role.ADMINISTRATOR));
  }

  /** Another for every call. */
  NewWord newWord() {
    return Proposals.word(words++);
  }

  Contribution draft(Actor author, Proposal proposal) {
    return services.write().execute(author, Content.of(proposal));
  }

  Contribution submitted(Actor author, Proposal proposal) {
    Contribution draft = draft(author, proposal);
    return services.submit().execute(author, draft.id(), draft.revision());
  }

  Contribution approve(Actor reviewer, Contribution seen) {
    return services
        .decide()
        .execute(
            reviewer, DecisionRequest.of(DecisionKind.APPROVE, seen.id(), seen.revision(), ""));
  }

  Contribution present(Contribution earlier) {
    return records
        .book()
        .inTransaction(unit -> unit.contributions().find(earlier.id()))
        .orElseThrow();
  }

  List<Decision> decisions(Contribution on) {
    return records.book().inTransaction(unit -> unit.decisions().on(on.id()));
  }

  Optional<Word> word(String spelling) {
    return records.book().inTransaction(unit -> unit.bank().word(spelling));
  }

  /** Checks that something is refused with an exception of a kind, and changes nothing. */
  <X extends Throwable> X refused(Class<X> kind, Supplier<?> attempt) {
    List<String> before = records.audit();
    int edition = records.newestEdition();
    Throwable problem = catchThrowable(attempt::get);
    assertThat(problem).isInstanceOf(kind);
    assertThat(records.audit()).isEqualTo(before);
    assertThat(records.newestEdition()).isEqualTo(edition);
    return kind.cast(problem);
  }

  /** Checks that something is refused because of certain fields. */
  void refusedAt(Supplier<?> attempt, String... fields) {
    assertThat(refused(RejectedException.class, attempt).errors())
        .extracting(FieldError::field)
        .containsExactlyInAnyOrder(fields);
  }
}
