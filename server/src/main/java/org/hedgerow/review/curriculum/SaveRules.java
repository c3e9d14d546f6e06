package org.hedgerow.review.curriculum;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.review.ReviewContext;

/** Makes or changes a named set of reading rules, in a new edition. */
public final class SaveRules {
  private final ChangeCurriculum desk;

  SaveRules(ReviewContext context) {
    this.desk = new ChangeCurriculum(context);
  }

  /**
   * @param seen the {@link RulesDraft#mark} of what stood there; empty if it doesn't matter
   * @return the number of the edition
   * @throws RejectedException with all that is wrong
   * @throws org.hedgerow.operations.StaleUpdateException if it isn't so any more
   */
  public int execute(Actor actor, RulesDraft draft, Optional<String> seen) {
    RejectedException.throwIfAny(draft.errors());
    return desk.change(actor, seen, present -> edit(present, draft.set()));
  }

  private static ChangeCurriculum.Edited edit(Curriculum present, RuleSet set) {
    requireNotUsual(present, set.name());
    Optional<RuleSet> before = present.rules().named(set.name());
    return new ChangeCurriculum.Edited(
        present.with(set),
        RulesDraft.mark(before),
        "rules.saved",
        "rules " + set.name(),
        "Reading rules: %s.".formatted(set.title()),
        before.map(SaveRules::record).orElse(Map.of()),
        record(set));
  }

  static void requireNotUsual(Curriculum present, String name) {
    if (present.rules().all().get(0).name().equals(name)) {
      throw new RejectedException(
          List.of(
              new FieldError(
                  "name",
                  "The usual rules are used by default and stay as they are. Make a set with another name.")));
    }
  }

  static Map<String, Object> record(RuleSet set) {
    return Map.of("title", set.title(), "note", set.note(), "switches", set.rules().label());
  }
}
