package org.hedgerow.web.review;

import org.hedgerow.review.Contribution;

/** Another contribution about the same. */
record OtherView(int id, String summary, String author, Times when) {
  static OtherView of(Contribution other) {
    return new OtherView(
        other.id(),
        other.proposal().summary(),
        other.author().name(),
        Times.of(other.submitted().orElse(other.changed())));
  }
}
