package org.hedgerow.review;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a reviewer answered.
 *
 * @param contributionId on what
 * @param revision on which revision of it
 * @param comment why; may be empty where no reason is needed
 * @param overruled the code of the finding that is wrong here
 * @param edition which it published
 */
public record Decision(
    int id,
    int contributionId,
    int revision,
    DecisionKind kind,
    Person by,
    Instant at,
    String comment,
    Optional<String> overruled,
    OptionalInt edition) {}
