package org.hedgerow.lexicon;

/**
 * What a standard asks of words in one accent.
 *
 * @param accent its tag
 * @param spelling how its speakers spell; empty if that isn't said
 * @param blocked a bit for each number of a profile, set where the standard doesn't allow it and it
 *     is no target
 * @param targets the numbers of the realisations that are targets; none if anything passes
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, and never changed
record AccentStandard(String accent, String spelling, long[] blocked, int[] targets) {}
