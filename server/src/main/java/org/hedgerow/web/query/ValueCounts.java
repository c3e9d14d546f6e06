package org.hedgerow.web.query;

import java.util.HashMap;
import java.util.Map;
import org.hedgerow.caching.ComputingCache;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Tally;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;

/**
 * How many words the default list of each phonogram value has. An edition never changes, so each is
 * counted once. Thread-safe.
 */
public final class ValueCounts {

  private static final int ACCENTS_AT_ONCE = 20;

  private final ComputingCache<Key, Map<Correspondence, Tally>> counts =
      ComputingCache.ofSize(ACCENTS_AT_ONCE);

  private record Key(int edition, String accent) {}

  /** By every numbered value of the catalogue. */
  public Map<Correspondence, Tally> in(Lexicon lexicon, String accent) {
    return counts.get(new Key(lexicon.edition(), accent), key -> count(lexicon, accent));
  }

  private static Map<Correspondence, Tally> count(Lexicon lexicon, String accent) {
    Map<Correspondence, Tally> counts = new HashMap<>();
    for (Correspondence each : lexicon.catalogue().correspondences()) {
      if (each.isTaught()) {
        counts.put(each, lexicon.tally(WordQuery.of(accent, Standard.of(each))));
      }
    }
    return Map.copyOf(counts);
  }
}
