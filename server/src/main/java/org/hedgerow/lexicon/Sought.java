package org.hedgerow.lexicon;

import java.util.List;
import java.util.Optional;

/**
 * A query with its standard worked out for each of its accents, once for all words it is asked of.
 *
 * @param differsIn the standard in the accent in which words must not pass
 */
record Sought(WordQuery query, List<AccentStandard> accents, Optional<AccentStandard> differsIn) {

  /** The same asked of the accent in which words must not pass. */
  Sought in(AccentStandard there) {
    return new Sought(query.withAccents(List.of(there.accent())), List.of(there), Optional.empty());
  }
}
