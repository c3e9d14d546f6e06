package org.hedgerow.lexicon;

import java.util.Optional;

/**
 * What an edition changed in a word.
 *
 * @param before the word as it stood in the edition before; empty if it is new
 * @param after the word as it stands from this edition on; empty if it is withdrawn
 */
public record WordChange(String spelling, Optional<Word> before, Optional<Word> after) {}
