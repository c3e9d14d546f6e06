package org.hedgerow.web.review;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.Content;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.ContributionQuery;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.review.SubmitMany;
import org.hedgerow.review.Write;
import org.hedgerow.web.Routes;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.http.IfMatch;

/** {@code /contributions}: what people propose. */
final class Contributions {
  private final ReviewServices services;
  private final ContentBodyReader contents;
  private final ContributionAnswer answer;
  private final Attempts attempts;

  Contributions(
      ReviewServices services,
      ContentBodyReader contents,
      ContributionAnswer answer,
      Attempts attempts) {
    this.services = services;
    this.contents = contents;
    this.answer = answer;
    this.attempts = attempts;
  }

  void list(ApiRequest request) {
    ContributionFilters filters = new ContributionFilters(request.parameters(), request.actor());
    ContributionQuery query = filters.query();
    request.parameters().errors().throwIfAny();
    List<Contribution> found = services.reviews().find(request.actor(), query);
    ContributionListView view = ContributionListView.of(found, filters.limit(), answer);
    request.context().json(view);
  }

  void add(ApiRequest request) {
    ContentBodyReader.Fresh fresh = contents.fresh(request.context());
    Write.Kept kept =
        fresh.submit()
            ? submitted(request.actor(), fresh.content())
            : services.write().once(request.actor(), fresh.content());
    int id = kept.contribution().id();
    request
        .context()
        .status(kept.repeated() ? 200 : 201)
        .header(Header.LOCATION, "%s/contributions/%d".formatted(Routes.API, id));
    answer.send(request.context(), kept.contribution());
  }

  /** Wholly or not at all: what can't be submitted isn't kept as a draft either. */
  private Write.Kept submitted(Actor actor, Content content) {
    SubmitMany.Result result = services.submitMany().execute(actor, List.of(content)).get(0);
    return result
        .submitted()
        .map(contribution -> new Write.Kept(contribution, result.repeated()))
        .orElseThrow(() -> ProposalErrors.problem(result.errors()).exception());
  }

  void open(ApiRequest request) {
    answer.send(request.context(), request.actor(), ContributionId.of(request.context()));
  }

  void change(ApiRequest request) {
    Context context = request.context();
    int id = ContributionId.of(context);
    int revision = IfMatch.revision(context);
    Content content = contents.content(context);
    Contribution changed =
        attempts.at(
            new Attempts.Sent(request.actor(), revision, Optional.of(content)),
            () -> services.revise().execute(request.actor(), id, revision, content));
    answer.send(context, changed);
  }

  void discard(ApiRequest request) {
    int id = ContributionId.of(request.context());
    int revision = IfMatch.revision(request.context());
    attempts.at(
        Attempts.Sent.of(request.actor(), revision),
        () -> {
          services.discard().execute(request.actor(), id, revision);
          return id;
        });
    request.context().status(204);
  }
}
