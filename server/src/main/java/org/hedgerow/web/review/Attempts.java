package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.review.ConflictException;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.Decision;
import org.hedgerow.review.Reviews;
import org.hedgerow.review.StaleRevisionException;
import org.hedgerow.web.http.FieldDifference;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;

/** Runs a review command and turns its conflicts into problems that show the present state. */
final class Attempts {
  private final Reviews reviews;
  private final ProposalJson proposals;

  Attempts(Reviews reviews, ProposalJson proposals) {
    this.reviews = reviews;
    this.proposals = proposals;
  }

  /**
   * What somebody sends.
   *
   * @param revision which they have read
   * @param content what it should say, where that is to change
   */
  record Sent(Actor actor, int revision, Optional<Content> content) {
    static Sent of(Actor actor, int revision) {
      return new Sent(actor, revision, Optional.empty());
    }
  }

  <R> R at(Sent sent, Supplier<R> verb) {
    try {
      return verb.get();
    } catch (StaleRevisionException stale) {
      throw stale(stale, sent).exception();
    } catch (ConflictException conflict) {
      throw conflict(conflict, sent.actor()).exception();
    } catch (RejectedException refused) {
      throw ProposalErrors.problem(refused.errors()).exception();
    }
  }

  private Problem stale(StaleRevisionException stale, Sent sent) {
    Contribution present = stale.present();
    List<FieldDifference> changed = new ArrayList<>();
    changed.add(FieldDifference.revision(sent.revision(), present.revision()));
    sent.content()
        .map(
            yours ->
                FieldDifference.between(proposals.tree(yours), proposals.tree(present.content())))
        .ifPresent(changed::addAll);
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("present", view(present));
    members.put("changed", changed);
    return Problem.of(
            ProblemType.STALE,
            stale.getMessage() + ". Look at what has changed, and send yours for that revision.")
        .with(members);
  }

  private Problem conflict(ConflictException conflict, Actor actor) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("present", view(conflict.present()));
    lastDecision(actor, conflict.present().id())
        .ifPresent(decision -> members.put("decided", DecisionView.of(decision)));
    return Problem.of(ProblemType.CONFLICT, conflict.getMessage() + ".").with(members);
  }

  private Optional<Decision> lastDecision(Actor actor, int id) {
    List<Decision> decisions = reviews.open(actor, id).decisions();
    return decisions.isEmpty()
        ? Optional.empty()
        : Optional.of(decisions.get(decisions.size() - 1));
  }

  private ContributionView view(Contribution contribution) {
    return ContributionView.of(contribution, proposals.tree(contribution.proposal()));
  }
}
