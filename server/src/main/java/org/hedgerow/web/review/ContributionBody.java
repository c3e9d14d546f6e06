package org.hedgerow.web.review;

import org.hedgerow.review.Proposal;
import org.jspecify.annotations.Nullable;

/** What is sent to {@code POST /contributions}. */
record ContributionBody(
    @Nullable Proposal proposal,
    @Nullable String wantedFor,
    @Nullable String note,
    @Nullable Boolean submit) {}
