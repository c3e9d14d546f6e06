package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What an edition changed in one thing that has a name.
 *
 * @param before as it stood in the edition before; empty if it is new
 * @param after as it stands from this edition on; empty if it is withdrawn
 */
public record Changed<T>(String name, Optional<T> before, Optional<T> after) {

  /** All that differ, in the order in which they stood, new ones last. */
  static <T> List<Changed<T>> between(List<T> before, List<T> after, Function<T, String> name) {
    Map<String, T> old = named(before, name);
    Map<String, T> now = named(after, name);
    Map<String, T> either = new LinkedHashMap<>(old);
    either.putAll(now);
    List<Changed<T>> changed = new ArrayList<>();
    for (String each : either.keySet()) {
      Changed<T> one =
          new Changed<>(
              each, Optional.ofNullable(old.get(each)), Optional.ofNullable(now.get(each)));
      if (!one.before().equals(one.after())) {
        changed.add(one);
      }
    }
    return List.copyOf(changed);
  }

  private static <T> Map<String, T> named(List<T> all, Function<T, String> name) {
    Map<String, T> named = new LinkedHashMap<>();
    all.forEach(each -> named.put(name.apply(each), each));
    return named;
  }

  /** In one word, for people. */
  public String what() {
    if (before.isEmpty()) {
      return "new";
    }
    return after.isEmpty() ? "withdrawn" : "changed";
  }
}
