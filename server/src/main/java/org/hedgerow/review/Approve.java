package org.hedgerow.review;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.RejectedException;

/**
 * Puts a contribution into the bank, in an edition of its own; where the centre wants two reviewers
 * to agree, the first only votes. A vote counts for the revision that it was given to.
 */
final class Approve implements DecisionStep {
  private final ReviewContext context;

  Approve(ReviewContext context) {
    this.context = context;
  }

  @Override
  public Outcome take(
      ReviewUnitOfWork unit, Contribution present, Actor actor, DecisionRequest request) {
    Set<Integer> voters = voters(unit.decisions().on(present.id()), present.revision());
    int voter = actor.account().map(Account::id).orElseThrow();
    boolean again = !voters.add(voter);
    boolean enough = voters.size() >= context.votes().getAsInt();
    if (again && !enough) {
      throw new ConflictException(
          "You have approved contribution %d already; another reviewer must agree"
              .formatted(present.id()),
          present);
    }
    return enough ? publish(unit, present, actor) : vote(unit, present);
  }

  private static Set<Integer> voters(List<Decision> decisions, int revision) {
    Set<Integer> voters = new HashSet<>();
    for (Decision each : decisions) {
      if (each.revision() == revision) {
        switch (each.kind()) {
          case APPROVE -> voters.add(each.by().accountId());
          case RETURN, DECLINE, WITHDRAW, REOPEN -> voters.clear();
          case OVERRULE -> {}
        }
      }
    }
    return voters;
  }

  /** A vote is for something that could be published now. */
  private Outcome vote(ReviewUnitOfWork unit, Contribution present) {
    RejectedException.throwIfAny(present.content().errors(context.snapshot(unit)));
    return Outcome.of(present);
  }

  private Outcome publish(ReviewUnitOfWork unit, Contribution present, Actor actor) {
    unit.bank().lock();
    BankSnapshot snapshot = context.snapshot(unit);
    Proposal proposal = present.proposal();
    RejectedException.throwIfAny(present.content().errors(snapshot));
    Change change =
        Overruled.of(unit.decisions().on(present.id()), present.revision())
            .on(proposal.change(snapshot, present.name()));
    int edition =
        unit.bank().publish(change, proposal.summary(), actor, present.id(), context.now());
    return Outcome.published(present.publishedIn(edition, context.now()), edition);
  }
}
