package org.hedgerow.store.editions;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Realisation;

/**
 * The ids of realisations in the database, where all accents share one table: those of the first
 * accent are their own, those of the next follow on.
 */
final class RealisationNumbers {
  private final Map<String, Integer> offsets = new HashMap<>();
  private final List<Realisation> realisations = new ArrayList<>();

  RealisationNumbers(List<AccentCatalogue> accents) {
    for (AccentCatalogue each : accents) {
      offsets.put(each.accent().tag(), realisations.size());
      realisations.addAll(each.realisations());
    }
  }

  /**
   * @param accent the tag of the accent whose realisation it is
   */
  int of(String accent, Realisation realisation) {
    Integer offset = offsets.get(accent);
    if (offset == null) {
      throw new IllegalArgumentException("no accent " + accent + " in this edition");
    }
    return offset + realisation.id();
  }

  Realisation get(int number) {
    return realisations.get(number);
  }
}
