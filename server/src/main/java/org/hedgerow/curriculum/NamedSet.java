package org.hedgerow.curriculum;

/** Something that an administrator names and a teacher chooses. */
public sealed interface NamedSet permits RuleSet, Sequence, SightWords {
  /** Small letters, as in queries and addresses. */
  String name();

  /** What a teacher calls it. */
  String title();

  /** For whom it is, or what is special about it; may be empty. */
  String note();
}
