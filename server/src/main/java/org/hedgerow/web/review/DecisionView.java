package org.hedgerow.web.review;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.review.Decision;

/**
 * What a reviewer answered.
 *
 * @param revision on which it was
 * @param comment left out where nothing was said
 * @param finding which was overruled
 * @param edition which it published
 */
record DecisionView(
    String decision,
    int revision,
    AuthorView by,
    Instant at,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) String comment,
    Optional<String> finding,
    OptionalInt edition) {
  static DecisionView of(Decision decision) {
    return new DecisionView(
        decision.kind().label(),
        decision.revision(),
        AuthorView.of(decision.by()),
        decision.at(),
        decision.comment(),
        decision.overruled(),
        decision.edition());
  }
}
