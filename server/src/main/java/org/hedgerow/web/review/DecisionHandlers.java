package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.DecisionRequest;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.http.IfMatch;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.security.Refusals;

/** {@code /contributions/{id}/decisions} and {@code /decisions}: what reviewers answer. */
final class DecisionHandlers {
  private final ReviewServices services;
  private final DecisionReader reader;
  private final ContributionAnswer answer;
  private final Attempts attempts;

  DecisionHandlers(
      ReviewServices services,
      DecisionReader reader,
      ContributionAnswer answer,
      Attempts attempts) {
    this.services = services;
    this.reader = reader;
    this.answer = answer;
    this.attempts = attempts;
  }

  void one(ApiRequest request) {
    int id = ContributionId.of(request.context());
    DecisionRequest decision =
        reader.one(request.context(), id, IfMatch.revision(request.context()));
    answer.send(request.context(), decide(request.actor(), decision));
  }

  private Contribution decide(Actor actor, DecisionRequest decision) {
    return attempts.at(
        Attempts.Sent.of(actor, decision.revision()),
        () -> services.decide().execute(actor, decision));
  }

  /** Each by itself: what can't be decided doesn't hold up the others. */
  void many(ApiRequest request) {
    List<DecisionsView.Result> results = new ArrayList<>();
    for (DecisionRequest decision : reader.many(request.context())) {
      results.add(result(request.actor(), decision));
    }
    request.context().json(new DecisionsView(results));
  }

  private DecisionsView.Result result(Actor actor, DecisionRequest decision) {
    try {
      return DecisionsView.Result.of(answer.view(decide(actor, decision)));
    } catch (RuntimeException thrown) {
      if (Refusals.problem(thrown).orElse(thrown) instanceof ProblemException refused) {
        return DecisionsView.Result.refused(decision.contribution(), refused.problem());
      }
      throw thrown;
    }
  }
}
