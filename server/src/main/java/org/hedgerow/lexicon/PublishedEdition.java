package org.hedgerow.lexicon;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What is recorded of an edition.
 *
 * @param at when it was published
 * @param summary what was changed, for people to read
 * @param by who decided, as others see them; empty where the program did
 * @param contribution the contribution that was approved, if that is why
 * @param words how many words it changed; 0 for the first, which is where all begins
 */
public record PublishedEdition(
    int number,
    Instant at,
    String summary,
    Optional<String> by,
    OptionalInt contribution,
    int words) {}
