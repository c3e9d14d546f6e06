package org.hedgerow.reading;

import static java.util.stream.Collectors.joining;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;

/**
 * A centre's reading rules: the switches that are on.
 *
 * <p>The default is common practice, no source.
 */
public record ReadingRules(Set<Switch> on) {

  /** The switches as they stand when a centre has chosen nothing. */
  public static final ReadingRules DEFAULT =
      new ReadingRules(
          Set.copyOf(Arrays.stream(Switch.values()).filter(Switch::isOnByDefault).toList()));

  public ReadingRules {
    on = Set.copyOf(on);
  }

  public boolean allow(Switch each) {
    return on.contains(each);
  }

  /** The same rules with one switch turned. */
  public ReadingRules with(Switch each, boolean turnedOn) {
    EnumSet<Switch> changed = EnumSet.noneOf(Switch.class);
    changed.addAll(on);
    if (turnedOn) {
      changed.add(each);
    } else {
      changed.remove(each);
    }
    return new ReadingRules(changed);
  }

  /** Every switch in its order, those that are off with {@code no-} before them. */
  public String label() {
    return Arrays.stream(Switch.values())
        .map(each -> allow(each) ? each.label() : "no-" + each.label())
        .collect(joining(","));
  }
}
