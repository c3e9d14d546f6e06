package org.hedgerow.web.review;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.Reviews;
import org.hedgerow.web.http.IfMatch;

/** Shows contributions. */
final class ContributionAnswer {
  private final Reviews reviews;
  private final ProposalJson proposals;

  ContributionAnswer(Reviews reviews, ProposalJson proposals) {
    this.reviews = reviews;
    this.proposals = proposals;
  }

  ContributionView view(Contribution contribution) {
    return ContributionView.of(contribution, proposals.tree(contribution.proposal()));
  }

  List<ContributionView> views(List<Contribution> contributions) {
    return contributions.stream().map(this::view).toList();
  }

  /** Answers with a contribution as it is now, and all that belongs to it. */
  void send(Context context, Actor actor, int id) {
    send(context, reviews.open(actor, id));
  }

  /** Answers with what somebody has just written or decided on, and all that belongs to it. */
  void send(Context context, Contribution present) {
    send(context, reviews.about(present));
  }

  private void send(Context context, Reviews.Dossier dossier) {
    Contribution contribution = dossier.contribution();
    context
        .header(Header.ETAG, IfMatch.entityTag(contribution.revision()))
        .json(
            ContributionView.of(
                contribution,
                proposals.tree(contribution.proposal()),
                Optional.of(dossier.decisions().stream().map(DecisionView::of).toList()),
                Optional.of(views(dossier.others())),
                Optional.of(ProposalErrors.errors(dossier.errors()))));
  }
}
