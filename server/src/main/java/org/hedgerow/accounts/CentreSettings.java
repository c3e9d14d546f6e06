package org.hedgerow.accounts;

import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;
import org.hedgerow.operations.StaleUpdateException;

/** What a centre can choose for itself. */
public final class CentreSettings {
  private static final String SUBJECT = "centre";

  private final AccountRepository book;
  private final InstantSource clock;

  CentreSettings(AccountRepository book, InstantSource clock) {
    this.book = book;
    this.clock = clock;
  }

  public Centre read() {
    return book.step(unit -> unit.centre().read());
  }

  /**
   * @param asExpected whether the centre is still as the actor knows it
   * @return how it is now
   * @throws StaleUpdateException if it isn't as expected
   * @throws RejectedException if it can't be as it is asked
   */
  public Centre change(Actor actor, CentreEdit edit, Predicate<Centre> asExpected) {
    actor.require(Role.ADMINISTRATOR);
    RejectedException.throwIfAny(edit.errors());
    return book.inTransaction(unit -> change(unit, actor, edit, asExpected));
  }

  private Centre change(
      AccountUnitOfWork unit, Actor actor, CentreEdit edit, Predicate<Centre> asExpected) {
    Centre before = unit.centre().lock();
    if (!asExpected.test(before)) {
      throw new StaleUpdateException(
          "The centre was changed in the meantime: it is called %s now, and %s."
              .formatted(
                  before.name().map("“%s”"::formatted).orElse("nothing"),
                  before.approvals() == 1 ? "one reviewer approves" : "two reviewers approve"));
    }
    Centre after = before.with(edit);
    if (!after.equals(before)) {
      unit.centre().save(after);
      Audit.of(unit, clock)
          .add(actor, "centre.changed", SUBJECT, told(before, after), told(after, before));
    }
    return after;
  }

  /** As far as it differs from another. */
  private static Map<String, Object> told(Centre centre, Centre other) {
    Map<String, Object> told = new LinkedHashMap<>();
    if (!centre.name().equals(other.name())) {
      told.put("name", centre.name().orElse(""));
    }
    if (centre.approvals() != other.approvals()) {
      told.put("approvals", centre.approvals());
    }
    return told;
  }
}
