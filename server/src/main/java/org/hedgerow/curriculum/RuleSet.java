package org.hedgerow.curriculum;

import static java.util.Objects.requireNonNull;

import org.hedgerow.reading.ReadingRules;

/**
 * Reading rules with a name, for centres that don't want to choose switch by switch.
 *
 * @param name letters, as in queries
 * @param title what a teacher calls it
 * @param note for whom it is
 */
public record RuleSet(String name, String title, ReadingRules rules, String note)
    implements NamedSet {

  public RuleSet {
    requireNonNull(rules);
    if (!name.matches("[a-z]+")) {
      throw new IllegalArgumentException("a set of rules is named by letters, not: " + name);
    }
  }
}
