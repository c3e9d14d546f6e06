package org.hedgerow.review.curriculum;

import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.review.ReviewContext;

/** Takes a named set of reading rules out of the choice, in a new edition; older ones keep it. */
public final class WithdrawRules {
  private final ChangeCurriculum desk;

  WithdrawRules(ReviewContext context) {
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
    SaveRules.requireNotUsual(present, name);
    RuleSet set =
        present.rules().named(name).orElseThrow(() -> new NotFoundException("The set of rules"));
    return new ChangeCurriculum.Edited(
        present.withoutRules(name),
        RulesDraft.mark(Optional.of(set)),
        "rules.withdrawn",
        "rules " + name,
        "Reading rules withdrawn: %s.".formatted(set.title()),
        SaveRules.record(set),
        Map.of());
  }
}
