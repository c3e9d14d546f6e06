package org.hedgerow.review.curriculum;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.review.ReviewContext;

/** Takes a named set of sight words out of the choice, in a new edition; older ones keep it. */
public final class WithdrawSightWords {
  private final ChangeCurriculum desk;

  WithdrawSightWords(ReviewContext context) {
    this.desk = new ChangeCurriculum(context);
  }

  /**
   * @return the number of the edition
   * @throws NotFoundException if there is none of this name
   * @throws RejectedException if it is the one that counts where nothing is chosen
   */
  public int execute(Actor actor, String name, Optional<String> seen) {
    return desk.change(actor, seen, present -> edit(present, name));
  }

  private static ChangeCurriculum.Edited edit(Curriculum present, String name) {
    SightWords set =
        present
            .sightWords()
            .named(name)
            .orElseThrow(() -> new NotFoundException("The set of sight words"));
    requireNotUsual(present, set);
    return new ChangeCurriculum.Edited(
        present.withoutSightWords(name),
        SightWordsDraft.mark(Optional.of(set)),
        "sight-words.withdrawn",
        "sight words " + name,
        "Sight words withdrawn: %s.".formatted(set.title()),
        SaveSightWords.record(set),
        Map.of());
  }

  private static void requireNotUsual(Curriculum present, SightWords set) {
    if (present.sightWords().usual().filter(set::equals).isPresent()) {
      throw new RejectedException(
          List.of(
              new FieldError(
                  "name",
                  "These words are used by default and can't be withdrawn. Change them instead.")));
    }
  }
}
