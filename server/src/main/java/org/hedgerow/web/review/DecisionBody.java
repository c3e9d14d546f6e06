package org.hedgerow.web.review;

import org.jspecify.annotations.Nullable;

/** What is sent to {@code POST /contributions/{id}/decisions}. */
record DecisionBody(
    @Nullable String decision, @Nullable String comment, @Nullable String finding) {}
