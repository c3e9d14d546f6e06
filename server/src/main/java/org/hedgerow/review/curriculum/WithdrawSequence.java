package org.hedgerow.review.curriculum;

import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.review.ReviewContext;

/** Takes an order of teaching out of the choice, in a new edition; older ones keep it. */
public final class WithdrawSequence {
  private final ChangeCurriculum desk;

  WithdrawSequence(ReviewContext context) {
    this.desk = new ChangeCurriculum(context);
  }

  /**
   * @return the number of the edition
   * @throws NotFoundException if there is none of this name
   */
  public int execute(Actor actor, String name, Optional<String> seen) {
    return desk.change(actor, seen, present -> edit(present, name));
  }

  private static ChangeCurriculum.Edited edit(Curriculum present, String name) {
    Sequence sequence =
        present.sequence(name).orElseThrow(() -> new NotFoundException("The order of teaching"));
    return new ChangeCurriculum.Edited(
        present.withoutSequence(name),
        SequenceDraft.mark(Optional.of(sequence)),
        "sequence.withdrawn",
        "sequence " + name,
        "Order of teaching withdrawn: %s.".formatted(sequence.title()),
        SaveSequence.record(sequence),
        Map.of());
  }
}
