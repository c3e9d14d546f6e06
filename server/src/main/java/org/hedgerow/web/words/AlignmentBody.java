package org.hedgerow.web.words;

import org.jspecify.annotations.Nullable;

/** What is sent to {@code POST /alignments}. */
record AlignmentBody(@Nullable String spelling, @Nullable String sounds, @Nullable String accent) {}
