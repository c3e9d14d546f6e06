package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Realisation;

/**
 * The realisations of an accent, of its parent and so on, numbered together: an accent's own keep
 * their ids.
 */
final class ChainedRealisations {
  private final List<Realisation> all = new ArrayList<>();
  private final Map<String, Integer> offsets = new HashMap<>();
  private final int owned;
  private final Map<Correspondence, Integer> usual = new HashMap<>();

  ChainedRealisations(List<AccentCatalogue> chain) {
    for (AccentCatalogue each : chain) {
      offsets.put(each.accent().tag(), all.size());
      all.addAll(each.realisations());
    }
    owned = chain.get(0).realisations().size();
    for (Realisation own : chain.get(0).realisations()) {
      usual.putIfAbsent(own.correspondence(), own.id());
    }
  }

  int size() {
    return all.size();
  }

  Realisation get(int number) {
    return all.get(number);
  }

  /**
   * @param accent the accent of the chain whose realisation it is
   */
  int number(String accent, Realisation realisation) {
    return offsets.getOrDefault(accent, 0) + realisation.id();
  }

  /** The accent's own realisation of the same correspondence; the same number if it has none. */
  int own(int number) {
    return number < owned ? number : usual.getOrDefault(all.get(number).correspondence(), number);
  }
}
