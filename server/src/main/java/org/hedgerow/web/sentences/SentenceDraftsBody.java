package org.hedgerow.web.sentences;

import com.fasterxml.jackson.annotation.JsonFormat;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is sent to {@code POST /sentence-drafts}. */
record SentenceDraftsBody(
    @Nullable String phonogram,
    @Nullable Integer value,
    @JsonFormat(with = JsonFormat.Feature.ACCEPT_SINGLE_VALUE_AS_ARRAY)
        @Nullable List<String> accent,
    @Nullable List<String> accents,
    @Nullable String rules,
    @Nullable List<String> taught,
    @Nullable String sightWords,
    @Nullable Integer minimum,
    @Nullable Integer maximum,
    @Nullable Integer count,
    @Nullable Long seed,
    @Nullable List<String> words,
    @Nullable List<String> kinds) {

  SentenceStandardBody standard() {
    return new SentenceStandardBody(
        phonogram, value, accent, accents, rules, taught, sightWords, minimum, maximum);
  }
}
