package org.hedgerow.review;

import java.util.List;
import java.util.Map;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;

/** Begins a draft, or finds the author's own that says the same. */
public final class Write {
  private final ReviewContext context;

  Write(ReviewContext context) {
    this.context = context;
  }

  /**
   * What is kept.
   *
   * @param repeated whether it was there before: a draft, or already submitted
   */
  public record Kept(Contribution contribution, boolean repeated) {}

  public Contribution execute(Actor actor, Content content) {
    return once(actor, content).contribution();
  }

  /** As {@link #execute}, and says whether the author had sent the same before. */
  public Kept once(Actor actor, Content content) {
    actor.require(Role.CONTRIBUTOR);
    Person author = Person.of(actor.requireAccount());
    return context.inTransaction(unit -> once(unit, actor, content, author));
  }

  private Kept once(ReviewUnitOfWork unit, Actor actor, Content content, Person author) {
    unit.contributions().lockAuthor(author.accountId());
    return PendingDuplicates.of(unit, author, List.of(content))
        .saying(content)
        .map(earlier -> new Kept(earlier, true))
        .orElseGet(() -> new Kept(write(unit, actor, content, author), false));
  }

  Contribution write(ReviewUnitOfWork unit, Actor actor, Content content, Person author) {
    Contribution draft = unit.contributions().add(content, author, context.now());
    context.record(unit, actor, "begun", draft, Map.of(), Map.of("kind", draft.kind().label()));
    return draft;
  }
}
