package org.hedgerow.curriculum;

import java.util.List;
import java.util.Optional;
import org.hedgerow.reading.ReadingRules;

/** The named sets of reading rules, the usual one first. */
public record RuleSets(List<RuleSet> all) {

  private static final RuleSet DEFAULT =
      new RuleSet("usual", "The usual rules", ReadingRules.DEFAULT, "Used by default.");

  /** Where nobody has named any others. */
  public static final RuleSets DEFAULT_ONLY = new RuleSets(List.of(DEFAULT));

  /**
   * @throws IllegalArgumentException if the first isn't what counts where nothing is chosen, or two
   *     have one name
   */
  public RuleSets {
    all = List.copyOf(all);
    if (!all.get(0).rules().equals(ReadingRules.DEFAULT)) {
      throw new IllegalArgumentException("the first set of rules must be the usual one");
    }
    if (all.stream().map(RuleSet::name).distinct().count() < all.size()) {
      throw new IllegalArgumentException("two sets of rules have one name");
    }
  }

  public Optional<RuleSet> named(String name) {
    return all.stream().filter(each -> each.name().equals(name)).findFirst();
  }

  /** The set with just these rules, if one has them. */
  public Optional<RuleSet> with(ReadingRules rules) {
    return all.stream().filter(each -> each.rules().equals(rules)).findFirst();
  }

  public List<String> names() {
    return all.stream().map(RuleSet::name).toList();
  }
}
