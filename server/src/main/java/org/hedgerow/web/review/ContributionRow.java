package org.hedgerow.web.review;

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
        KindForm.of(contribution.kind()).title(),
        subject.isEmpty() ? "…" : subject,
        contribution.state().label(),
        own ? ReviewWording.of(contribution.state()) : ReviewWording.ofOthers(contribution.state()),
        contribution.author().name(),
        Times.of(contribution.changed()));
  }
}
