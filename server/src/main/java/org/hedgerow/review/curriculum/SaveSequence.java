package org.hedgerow.review.curriculum;

import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.review.ReviewContext;

/** Makes or changes an order of teaching, in a new edition. */
public final class SaveSequence {
  private final ChangeCurriculum desk;
  private final ReviewContext context;

  SaveSequence(ReviewContext context) {
    this.context = context;
    this.desk = new ChangeCurriculum(context);
  }

  /**
   * @param seen the {@link SequenceDraft#mark} of what stood there; empty if it doesn't matter
   * @return the number of the edition
   * @throws RejectedException with all that is wrong
   * @throws org.hedgerow.operations.StaleUpdateException if it isn't so any more
   */
  public int execute(Actor actor, SequenceDraft draft, Optional<String> seen) {
    Catalogue catalogue = context.newest().get().catalogue();
    RejectedException.throwIfAny(draft.errors(catalogue));
    return desk.change(actor, seen, present -> edit(present, draft.sequence(catalogue)));
  }

  private static ChangeCurriculum.Edited edit(Curriculum present, Sequence sequence) {
    Optional<Sequence> before = present.sequence(sequence.name());
    return new ChangeCurriculum.Edited(
        present.with(sequence),
        SequenceDraft.mark(before),
        "sequence.saved",
        "sequence " + sequence.name(),
        "Order of teaching: %s.".formatted(sequence.title()),
        before.map(SaveSequence::record).orElse(Map.of()),
        record(sequence));
  }

  static Map<String, Object> record(Sequence sequence) {
    return Map.of(
        "title",
        sequence.title(),
        "note",
        sequence.note(),
        "steps",
        SequenceDraft.of(sequence).stepsInLines());
  }
}
