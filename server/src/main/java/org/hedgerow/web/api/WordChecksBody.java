package org.hedgerow.web.api;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is sent to {@code POST /word-checks}. */
record WordChecksBody(
    @Nullable List<String> words,
    @Nullable String phonogram,
    @Nullable Integer value,
    @Nullable List<String> accents,
    @Nullable String rules,
    @Nullable List<String> taught) {}
