package org.hedgerow.review;

import java.util.Optional;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.Actor;
import org.hedgerow.phonics.Accents;

/**
 * Undoes an approval: what it changed is again as it was before, in a new edition. Old editions
 * keep what they say.
 */
final class UndoApproval implements DecisionStep {
  private final ReviewContext context;

  UndoApproval(ReviewContext context) {
    this.context = context;
  }

  /**
   * @throws ConflictException if what it changed has been changed again since
   */
  @Override
  public Outcome take(
      ReviewUnitOfWork unit, Contribution present, Actor actor, DecisionRequest request) {
    unit.bank().lock();
    int edition =
        unit.bank()
            .publish(
                undo(unit.bank(), present),
                "Undone: " + present.proposal().summary(),
                actor,
                present.id(),
                context.now());
    return Outcome.published(present.in(ContributionState.WITHDRAWN, context.now()), edition);
  }

  private static Change undo(BankStore bank, Contribution present) {
    String subject = present.proposal().subject();
    return present.proposal().concernsSentence()
        ? undoSentence(bank, present, subject)
        : undoWord(bank, present, subject);
  }

  private static Change undoWord(BankStore bank, Contribution present, String spelling) {
    int edition = present.edition().orElseThrow();
    if (!bare(bank.word(spelling)).equals(bare(bank.word(spelling, edition)))) {
      throw changedSince(present);
    }
    return bank.word(spelling, edition - 1)
        .map(Change::of)
        .orElseGet(() -> Change.withoutWord(spelling));
  }

  /** What is said of the word, since whatever edition: later changes may have been undone. */
  private static Optional<Word> bare(Optional<Word> word) {
    return word.map(each -> each.since(0).among(Accents.UNKNOWN));
  }

  private static Change undoSentence(BankStore bank, Contribution present, String text) {
    int edition = present.edition().orElseThrow();
    if (!bank.sentence(text).equals(bank.sentence(text, edition))) {
      throw changedSince(present);
    }
    return bank.sentence(text, edition - 1)
        .map(Change::of)
        .orElseGet(() -> Change.withoutSentence(text));
  }

  private static ConflictException changedSince(Contribution present) {
    return new ConflictException(
        "What contribution %d changed has been changed again since; undo that first"
            .formatted(present.id()),
        present);
  }
}
