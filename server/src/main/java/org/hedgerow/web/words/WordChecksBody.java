package org.hedgerow.web.words;

import com.fasterxml.jackson.annotation.JsonFormat;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is sent to {@code POST /word-checks}. */
record WordChecksBody(
    @Nullable List<String> words,
    @Nullable String phonogram,
    @Nullable Integer value,
    @JsonFormat(with = JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY)
        @Nullable List<String> accent,
    @Nullable List<String> accents,
    @Nullable String rules,
    @Nullable List<String> taught) {}
