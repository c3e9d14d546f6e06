package org.hedgerow.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.accounts.Account;
import org.hedgerow.accounts.Actor;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.accounts.RefusedException;
import org.hedgerow.accounts.Role;

/** What all decisions have in common: who may, on what, and what is written down. */
final class Deciding {
  private static final int LONGEST_COMMENT = 2_000;

  /** What a decision makes of a contribution. */
  @FunctionalInterface
  interface Step {
    Outcome take(ReviewPage page, Contribution present);
  }

  /**
   * What came of it.
   *
   * @param contribution as it is from now on
   * @param edition which was published
   * @param overruled the code of the finding that is wrong here
   */
  record Outcome(Contribution contribution, OptionalInt edition, Optional<String> overruled) {
    static Outcome of(Contribution contribution) {
      return new Outcome(contribution, OptionalInt.empty(), Optional.empty());
    }

    static Outcome published(Contribution contribution, int edition) {
      return new Outcome(contribution, OptionalInt.of(edition), Optional.empty());
    }

    static Outcome overruled(Contribution contribution, String code) {
      return new Outcome(contribution, OptionalInt.empty(), Optional.of(code));
    }
  }

  private final Workroom room;

  Deciding(Workroom room) {
    this.room = room;
  }

  /**
   * @param revision which the reviewer saw
   * @throws NotYoursException if it is the reviewer's own
   * @throws StaleException if it has been changed since
   * @throws ConflictException if somebody else was faster
   */
  Contribution decide(
      Actor actor, int id, int revision, DecisionKind kind, String comment, Step step) {
    actor.require(Role.REVIEWER);
    Account reviewer = actor.requireAccount();
    String reason = Given.text(comment);
    requireComment(kind, reason);
    Outcome outcome =
        room.inTransaction(
            page -> {
              Contribution present = page.contributions().lock(id).orElse(null);
              Contribution visible = Workroom.visible(Optional.ofNullable(present), actor);
              requireMayDecide(actor, visible, revision, kind);
              Outcome taken = step.take(page, visible);
              write(page, actor, reviewer, visible, taken, kind, reason);
              return taken;
            });
    outcome.edition().ifPresent(room.published());
    return outcome.contribution();
  }

  private static void requireComment(DecisionKind kind, String comment) {
    if (kind.needsComment() && comment.isEmpty()) {
      RefusedException.throwIfAny(List.of(new FieldFault("comment", "Say why, in a sentence.")));
    }
    if (comment.length() > LONGEST_COMMENT) {
      RefusedException.throwIfAny(
          List.of(new FieldFault("comment", "At most %d characters.".formatted(LONGEST_COMMENT))));
    }
  }

  private static void requireMayDecide(
      Actor actor, Contribution present, int revision, DecisionKind kind) {
    if (actor.is(present.author().accountId())) {
      throw new NotYoursException("Nobody decides on their own contribution");
    }
    if (!kind.isPossible(present.state())) {
      throw ConflictException.of(kind.done(), present);
    }
    Own.requireRevision(present, revision);
  }

  private void write(
      ReviewPage page,
      Actor actor,
      Account reviewer,
      Contribution before,
      Outcome outcome,
      DecisionKind kind,
      String comment) {
    Contribution after = outcome.contribution();
    if (!after.equals(before)) {
      page.contributions().save(after);
    }
    page.decisions()
        .add(
            after,
            new NewDecision(kind, comment, outcome.overruled(), outcome.edition()),
            Person.of(reviewer),
            room.now());
    room.record(
        page,
        actor,
        kind.done(),
        after,
        Map.of("state", before.state().label()),
        recorded(outcome, comment));
  }

  private static Map<String, Object> recorded(Outcome outcome, String comment) {
    Map<String, Object> recorded = new HashMap<>();
    recorded.put("state", outcome.contribution().state().label());
    recorded.put("revision", outcome.contribution().revision());
    recorded.put("comment", comment);
    outcome.edition().ifPresent(edition -> recorded.put("edition", edition));
    outcome.overruled().ifPresent(code -> recorded.put("overruled", code));
    return recorded;
  }
}
