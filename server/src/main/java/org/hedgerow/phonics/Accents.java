package org.hedgerow.phonics;

import static java.util.stream.Collectors.toUnmodifiableMap;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Accents that know of each other: what an accent does not say itself, it says as its parent does,
 * or its parent's parent.
 */
public final class Accents {

  /** Accents of which nothing is known but their tags. */
  public static final Accents UNKNOWN = new Accents(List.of());

  private final Map<String, String> names;
  private final Map<String, List<String>> chains;

  /**
   * @throws IllegalArgumentException if a parent is none of the accents, or accents are each
   *     other's parents
   */
  public Accents(Collection<Accent> accents) {
    Map<String, Accent> byTag =
        accents.stream().collect(toUnmodifiableMap(Accent::tag, Function.identity()));
    this.names = accents.stream().collect(toUnmodifiableMap(Accent::tag, Accent::name));
    this.chains =
        accents.stream().collect(toUnmodifiableMap(Accent::tag, accent -> chain(accent, byTag)));
  }

  private static List<String> chain(Accent accent, Map<String, Accent> byTag) {
    List<String> chain = new ArrayList<>(List.of(accent.tag()));
    Accent each = accent;
    while (each.parent().isPresent()) {
      String parent = each.parent().get();
      each = byTag.get(parent);
      if (each == null || chain.contains(parent)) {
        throw new IllegalArgumentException(
            "%s has the parent %s, which is no other accent".formatted(accent, parent));
      }
      chain.add(parent);
    }
    return List.copyOf(chain);
  }

  /** The tags of an accent, of its parent, of its parent's parent and so on. */
  public List<String> chain(String tag) {
    return chains.getOrDefault(tag, List.of(tag));
  }

  /** What a teacher calls an accent. */
  public String name(String tag) {
    return names.getOrDefault(tag, tag);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Accents that && names.equals(that.names) && chains.equals(that.chains);
  }

  @Override
  public int hashCode() {
    return chains.hashCode();
  }

  @Override
  public String toString() {
    return names.keySet().toString();
  }
}
