package org.hedgerow.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.accounts.Actor;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.accounts.RefusedException;
import org.hedgerow.reading.RuleSet;
import org.hedgerow.reading.Teaching;

/** Makes or changes a named set of reading rules, in a new edition. */
public final class SaveRules {
  private final TeachingDesk desk;

  SaveRules(Workroom room) {
    this.desk = new TeachingDesk(room);
  }

  /**
   * @param seen the {@link RulesDraft#mark} of what stood there; empty if it doesn't matter
   * @return the number of the edition
   * @throws RefusedException with all that is wrong
   * @throws org.hedgerow.accounts.ChangedMeanwhileException if it isn't so any more
   */
  public int execute(Actor actor, RulesDraft draft, Optional<String> seen) {
    RefusedException.throwIfAny(draft.faults());
    return desk.change(actor, seen, present -> edit(present, draft.set()));
  }

  private static TeachingDesk.Edited edit(Teaching present, RuleSet set) {
    requireNotUsual(present, set.name());
    Optional<RuleSet> before = present.rules().named(set.name());
    return new TeachingDesk.Edited(
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
      throw new RefusedException(
          List.of(
              new FieldFault(
                  "name",
                  "The usual rules are used by default and stay as they are. Make a set with another name.")));
    }
  }

  static Map<String, Object> record(RuleSet set) {
    return Map.of("title", set.title(), "note", set.note(), "switches", set.rules().label());
  }
}
