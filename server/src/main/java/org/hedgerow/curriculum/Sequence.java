package org.hedgerow.curriculum;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hedgerow.phonics.Correspondence;

/**
 * A scope and sequence: the order in which a centre teaches phonograms. Before its first step
 * children know the first sounds of the letters.
 *
 * @param name letters, as in queries
 * @param title what a teacher calls it
 * @param note what is special about it
 * @param steps the values that are taught together, step by step
 */
public record Sequence(String name, String title, String note, List<List<Correspondence>> steps)
    implements NamedSet {

  /**
   * @throws IllegalArgumentException if a value comes in two steps, or a step has none
   */
  public Sequence {
    if (!name.matches("[a-z]+")) {
      throw new IllegalArgumentException("a sequence is named by letters, not: " + name);
    }
    steps = steps.stream().map(List::copyOf).toList();
    Set<Correspondence> seen = new HashSet<>();
    for (List<Correspondence> step : steps) {
      requireNew(name, step, seen);
    }
  }

  private static void requireNew(String name, List<Correspondence> step, Set<Correspondence> seen) {
    if (step.isEmpty()) {
      throw new IllegalArgumentException("the sequence %s has an empty step".formatted(name));
    }
    for (Correspondence value : step) {
      if (!seen.add(value)) {
        throw new IllegalArgumentException(
            "the sequence %s teaches %s twice".formatted(name, value.label()));
      }
    }
  }

  /**
   * All that is taught up to a step and in it.
   *
   * @param step from 1; 0 for nothing yet
   */
  public Set<Correspondence> taughtBy(int step) {
    Set<Correspondence> taught = new HashSet<>();
    steps.subList(0, step).forEach(taught::addAll);
    return Set.copyOf(taught);
  }
}
