package org.hedgerow.web.review;

import org.hedgerow.review.Contribution;

/** Which draft a form is about; 0 and 0 while nothing has been kept. */
record DraftReference(int id, int revision) {
  static final DraftReference NONE = new DraftReference(0, 0);

  static DraftReference of(Contribution contribution) {
    return new DraftReference(contribution.id(), contribution.revision());
  }

  boolean isKept() {
    return id > 0;
  }
}
