package org.hedgerow.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;
import org.hedgerow.review.DecisionStep.Outcome;

/** Decides on contributions: who may, on what, and what is recorded of it. */
public final class Decide {
  private static final int MAX_COMMENT_LENGTH = 2_000;

  private final ReviewContext context;
  private final DecisionStep approve;
  private final DecisionStep undoApproval;
  private final DecisionStep reopen;

  Decide(ReviewContext context) {
    this.context = context;
    this.approve = new Approve(context);
    this.undoApproval = new UndoApproval(context);
    this.reopen = new Reopen(context);
  }

  /**
   * @return the contribution as it is from now on
   * @throws OwnershipException if it is the reviewer's own
   * @throws StaleRevisionException if it has been changed since the reviewer saw it
   * @throws ConflictException if somebody else was faster
   * @throws RejectedException if a comment is missing or too long, or what is approved doesn't fit
   *     the bank any more
   */
  public Contribution execute(Actor actor, DecisionRequest request) {
    actor.require(Role.REVIEWER);
    Account reviewer = actor.requireAccount();
    DecisionKind kind = request.kind();
    String reason = Given.text(request.comment());
    requireComment(kind, reason);
    Outcome outcome =
        context.inTransaction(
            unit -> {
              Contribution present =
                  ReviewContext.visible(unit.contributions().lock(request.contribution()), actor);
              requireMayDecide(actor, present, request.revision(), kind);
              Outcome taken = step(kind).take(unit, present, actor, request);
              write(unit, actor, reviewer, present, taken, kind, reason);
              return taken;
            });
    outcome.edition().ifPresent(context.published());
    return outcome.contribution();
  }

  private DecisionStep step(DecisionKind kind) {
    return switch (kind) {
      case APPROVE -> approve;
      case RETURN -> moved(ContributionState.RETURNED);
      case DECLINE -> moved(ContributionState.DECLINED);
      case OVERRULE -> Overrule.STEP;
      case WITHDRAW -> undoApproval;
      case REOPEN -> reopen;
    };
  }

  private DecisionStep moved(ContributionState state) {
    return (unit, present, actor, request) -> Outcome.of(present.in(state, context.now()));
  }

  private static void requireComment(DecisionKind kind, String comment) {
    if (kind.needsComment() && comment.isEmpty()) {
      RejectedException.throwIfAny(List.of(new FieldError("comment", "Say why, in a sentence.")));
    }
    if (comment.length() > MAX_COMMENT_LENGTH) {
      RejectedException.throwIfAny(
          List.of(
              new FieldError("comment", "At most %d characters.".formatted(MAX_COMMENT_LENGTH))));
    }
  }

  private static void requireMayDecide(
      Actor actor, Contribution present, int revision, DecisionKind kind) {
    if (actor.is(present.author().accountId())) {
      throw new OwnershipException("Nobody decides on their own contribution");
    }
    if (!kind.isPossible(present.state())) {
      throw ConflictException.of(kind.done(), present);
    }
    Own.requireRevision(present, revision);
  }

  private void write(
      ReviewUnitOfWork unit,
      Actor actor,
      Account reviewer,
      Contribution before,
      Outcome outcome,
      DecisionKind kind,
      String comment) {
    Contribution after = outcome.contribution();
    if (!after.equals(before)) {
      unit.contributions().save(after);
    }
    unit.decisions()
        .add(
            after,
            new NewDecision(kind, comment, outcome.overruled(), outcome.edition()),
            Person.of(reviewer),
            context.now());
    context.record(
        unit,
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
