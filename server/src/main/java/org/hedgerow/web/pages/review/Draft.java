package org.hedgerow.web.pages.review;

import org.hedgerow.review.Contribution;

/** Which draft a form is about; 0 and 0 while nothing has been kept. */
record Draft(int id, int revision) {
  static final Draft NONE = new Draft(0, 0);

  static Draft of(Contribution contribution) {
    return new Draft(contribution.id(), contribution.revision());
  }

  boolean isKept() {
    return id > 0;
  }
}
