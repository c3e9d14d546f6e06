package org.hedgerow.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.reading.RuleSet;
import org.hedgerow.reading.Teaching;

/** Makes or changes a named set of reading rules, in a new edition. */
public final class SaveRules {
  private final TeachingContext desk;

  SaveRules(ReviewContext context) {
    this.desk = new TeachingContext(context);
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

  private static TeachingContext.Edited edit(Teaching present, RuleSet set) {
    requireNotUsual(present, set.name());
    Optional<RuleSet> before = present.rules().named(set.name());
    return new TeachingContext.Edited(
        present.with(set),
        RulesDraft.mark(before),
        "rules.saved",
        "rules " + set.name(),
        "Reading rules: %s.".formatted(set.title()),
        before.map(SaveRules::record).orElse(Map.of()),
        record(set));
  }

  static void requireNotUsual(Teaching present, String name) {
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
