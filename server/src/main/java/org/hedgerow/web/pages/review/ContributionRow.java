package org.hedgerow.web.pages.review;

import org.hedgerow.review.Contribution;

/** A contribution in a list. */
record ContributionRow(
    int id,
    String kind,
    String subject,
    String state,
    String stateName,
    String author,
    Times changed) {

  static ContributionRow of(Contribution contribution, boolean own) {
    String subject = contribution.proposal().subject();
    return new ContributionRow(
        contribution.id(),
        Wording.of(contribution.kind()),
        subject.isEmpty() ? "…" : subject,
        contribution.state().label(),
        own ? Wording.of(contribution.state()) : Wording.ofOthers(contribution.state()),
        contribution.author().name(),
        Times.of(contribution.changed()));
  }
}
