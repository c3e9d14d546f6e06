package org.hedgerow.web.phonograms;

import static java.util.Objects.requireNonNull;

import java.util.Collection;
import java.util.Map;
import org.hedgerow.caching.ComputingCache;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.SoundFamilies;
import org.hedgerow.lexicon.SoundFamily;
import org.hedgerow.phonics.Sound;
import org.hedgerow.web.query.ValueCounts;

/**
 * The sounds of an accent, each with its spellings. An edition never changes, so all are put
 * together once. Thread-safe.
 */
final class CachedSoundFamilies {

  private static final int ACCENTS_AT_ONCE = 20;

  private final ValueCounts counts;
  private final ComputingCache<Key, Map<Sound, SoundFamily>> families =
      ComputingCache.ofSize(ACCENTS_AT_ONCE);

  private record Key(int edition, String accent) {}

  CachedSoundFamilies(ValueCounts counts) {
    this.counts = counts;
  }

  /** One for each sound of the accent, in the order of its inventory. */
  public Collection<SoundFamily> all(Lexicon lexicon, String accent) {
    return in(lexicon, accent).values();
  }

  /**
   * @param sound one of the accent's
   */
  public SoundFamily of(Lexicon lexicon, String accent, Sound sound) {
    return requireNonNull(in(lexicon, accent).get(sound));
  }

  private Map<Sound, SoundFamily> in(Lexicon lexicon, String accent) {
    return families.get(
        new Key(lexicon.edition(), accent),
        key -> new SoundFamilies(lexicon, accent, counts.in(lexicon, accent)).families());
  }
}
