package org.hedgerow.review;

import java.util.Optional;
import java.util.OptionalInt;

/** A {@link Decision} before it is written down. */
public record NewDecision(
    DecisionKind kind, String comment, Optional<String> overruled, OptionalInt edition) {}
