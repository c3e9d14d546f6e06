package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds what is one way there and another way here. */
final class Differences {
  private Differences() {}

  static List<Difference> between(List<Fact> there, List<Fact> here) {
    Map<String, String> before = byName(there);
    Map<String, String> after = byName(here);
    Set<String> names = new LinkedHashSet<>(before.keySet());
    names.addAll(after.keySet());
    List<Difference> differences = new ArrayList<>();
    for (String name : names) {
      String one = before.getOrDefault(name, "");
      String other = after.getOrDefault(name, "");
      if (!one.equals(other)) {
        differences.add(new Difference(name, one, other));
      }
    }
    return differences;
  }

  private static Map<String, String> byName(List<Fact> facts) {
    Map<String, String> byName = new LinkedHashMap<>();
    facts.forEach(fact -> byName.merge(fact.name(), fact.text(), (one, two) -> one + "; " + two));
    return byName;
  }
}
