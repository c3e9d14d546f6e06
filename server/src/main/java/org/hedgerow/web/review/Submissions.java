package org.hedgerow.web.review;

import org.hedgerow.review.ReviewServices;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.http.IfMatch;

/** {@code /contributions/{id}/submission}: whether it waits for a decision. */
final class Submissions {
  private final ReviewServices services;
  private final ContributionAnswer answer;
  private final Attempts attempts;

  Submissions(ReviewServices services, ContributionAnswer answer, Attempts attempts) {
    this.services = services;
    this.answer = answer;
    this.attempts = attempts;
  }

  void submit(ApiRequest request) {
    int id = ContributionId.of(request.context());
    int revision = IfMatch.revision(request.context());
    answer.send(
        request.context(),
        attempts.at(
            Attempts.Sent.of(request.actor(), revision),
            () -> services.submit().execute(request.actor(), id, revision)));
  }

  void takeBack(ApiRequest request) {
    int id = ContributionId.of(request.context());
    int revision = IfMatch.revision(request.context());
    answer.send(
        request.context(),
        attempts.at(
            Attempts.Sent.of(request.actor(), revision),
            () -> services.takeBack().execute(request.actor(), id, revision)));
  }
}
