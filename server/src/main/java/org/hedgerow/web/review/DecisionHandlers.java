package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.accounts.Actor;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.web.http.IfMatch;
import org.hedgerow.web.http.ApiRequest;
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
    Wish wish = reader.one(request.context(), id, IfMatch.revision(request.context()));
    answer.send(request.context(), decide(request.actor(), wish));
  }

  private Contribution decide(Actor actor, Wish wish) {
    return attempts.at(
        Attempts.Sent.of(actor, wish.revision()), () -> wish.fulfil(services, actor));
  }

  /** Each by itself: what can't be decided doesn't hold up the others. */
  void many(ApiRequest request) {
    List<DecisionsView.Result> results = new ArrayList<>();
    for (Wish wish : reader.many(request.context())) {
      results.add(result(request.actor(), wish));
    }
    request.context().json(new DecisionsView(results));
  }

  private DecisionsView.Result result(Actor actor, Wish wish) {
    try {
      return DecisionsView.Result.of(answer.view(decide(actor, wish)));
    } catch (RuntimeException thrown) {
      if (Refusals.problem(thrown).orElse(thrown) instanceof ProblemException refused) {
        return DecisionsView.Result.refused(wish.contribution(), refused.problem());
      }
      throw thrown;
    }
  }
}
