package org.hedgerow.review;

import java.util.Map;
import org.hedgerow.accounts.Actor;
import org.hedgerow.accounts.Role;

/** Begins a draft. */
public final class Write {
  private final Workroom room;

  Write(Workroom room) {
    this.room = room;
  }

  public Contribution execute(Actor actor, Content content) {
    actor.require(Role.CONTRIBUTOR);
    Person author = Person.of(actor.requireAccount());
    return room.inTransaction(page -> write(page, actor, content, author));
  }

  Contribution write(ReviewPage page, Actor actor, Content content, Person author) {
    Contribution draft = page.contributions().add(content, author, room.now());
    room.record(page, actor, "begun", draft, Map.of(), Map.of("kind", draft.kind().label()));
    return draft;
  }
}
