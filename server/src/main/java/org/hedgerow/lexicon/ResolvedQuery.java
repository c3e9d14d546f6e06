package org.hedgerow.lexicon;

import java.util.List;
import java.util.Optional;

/**
 * A query with its standard worked out for each of its accents, once for all words it is asked of.
 * Two of the same query are equal; the hash, which takes a while, is worked out once. Immutable.
 */
final class ResolvedQuery {

  private final WordQuery query;
  private final List<AccentStandard> accents;
  private final Optional<AccentStandard> differsIn;
  private final int hash;

  /**
   * @param differsIn the standard in the accent in which words must not pass
   */
  ResolvedQuery(WordQuery query, List<AccentStandard> accents, Optional<AccentStandard> differsIn) {
    this.query = query;
    this.accents = List.copyOf(accents);
    this.differsIn = differsIn;
    this.hash = query.hashCode();
  }

  WordQuery query() {
    return query;
  }

  List<AccentStandard> accents() {
    return accents;
  }

  Optional<AccentStandard> differsIn() {
    return differsIn;
  }

  /** The same asked of the accent in which words must not pass. */
  ResolvedQuery in(AccentStandard there) {
    return new ResolvedQuery(
        query.withAccents(List.of(there.accent())), List.of(there), Optional.empty());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ResolvedQuery that && hash == that.hash && query.equals(that.query);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
