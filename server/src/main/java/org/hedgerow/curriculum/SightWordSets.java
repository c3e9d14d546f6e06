package org.hedgerow.curriculum;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The named sets of sight words; the first counts where nothing is chosen. */
public record SightWordSets(List<SightWords> all) {

  /** What stands in the place of a name where children know no words as wholes. */
  public static final String NO_WORDS = "none";

  /** Where nobody has named any. */
  public static final SightWordSets NONE = new SightWordSets(List.of());

  /**
   * @throws IllegalArgumentException if two have one name
   */
  public SightWordSets {
    all = List.copyOf(all);
    if (all.stream().map(SightWords::name).distinct().count() < all.size()) {
      throw new IllegalArgumentException("two sets of sight words have one name");
    }
  }

  public Optional<SightWords> named(String name) {
    return all.stream().filter(each -> each.name().equals(name)).findFirst();
  }

  /** What counts where nothing is chosen; empty where there are none at all. */
  public Optional<SightWords> usual() {
    return all.stream().findFirst();
  }

  /** The words that count where nothing is chosen. */
  public Set<String> usualWords() {
    return usual().map(SightWords::asSet).orElse(Set.of());
  }

  public List<String> names() {
    return all.stream().map(SightWords::name).toList();
  }
}
