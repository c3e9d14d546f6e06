package org.hedgerow.web.review;

import java.util.OptionalInt;
import org.hedgerow.review.Decision;

/**
 * Something that somebody decided.
 *
 * @param earlier whether it was about an earlier revision
 * @param edition that it published
 */
record EventView(
    String who, String what, String comment, Times when, boolean earlier, OptionalInt edition) {
  static EventView of(Decision decision, int revision) {
    return new EventView(
        decision.by().name(),
        ReviewWording.of(decision.kind()),
        decision.comment(),
        Times.of(decision.at()),
        decision.revision() < revision,
        decision.edition());
  }
}
