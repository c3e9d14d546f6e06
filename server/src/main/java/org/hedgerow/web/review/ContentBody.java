package org.hedgerow.web.review;

import org.hedgerow.review.Proposal;
import org.jspecify.annotations.Nullable;

/** What a contribution should say. */
record ContentBody(
    @Nullable Proposal proposal, @Nullable String wantedFor, @Nullable String note) {}
