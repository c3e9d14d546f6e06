package org.hedgerow.lexicon;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.caching.ComputingCache;
import org.roaringbitmap.RoaringBitmap;

/**
 * Some words of a bank with an index over them, in the order of {@link Order#DEFAULT}: they are
 * numbered by their rank. Each accent is indexed when it is first asked for. Immutable.
 *
 * <p>Which words pass a query is worked out once and kept: every edition shares the words of the
 * first, so that most of what a new edition answers is known already.
 */
final class Segment {
  /** FullMaterial for the list of every value in several accents; each takes a few kilobytes. */
  static final int QUERIES_KEPT = 1_500;

  private final List<Word> words;
  private final Map<String, Integer> ids;
  private final Map<String, Lazy<AccentIndex>> indexes = new HashMap<>();
  private final Search search;
  private final Lazy<NearbyWords> nearby;
  private final MatchingWords none;
  private final ComputingCache<ResolvedQuery, MatchingWords> kept =
      ComputingCache.ofSize(QUERIES_KEPT);

  /**
   * @param words in any order, each spelling once
   */
  Segment(Speech speech, List<Word> words) {
    this.words =
        words.stream()
            .sorted(Order.DEFAULT.comparator())
            .map(word -> word.among(speech.known()))
            .toList();
    this.ids = ids(this.words);
    for (String tag : speech.tags()) {
      indexes.put(tag, new Lazy<>(() -> new AccentIndex(speech.tools(tag), this.words)));
    }
    this.search = new Search(this.words, this::index);
    this.nearby = new Lazy<>(() -> new NearbyWords(this.words));
    this.none = new MatchingWords(this.words, new RoaringBitmap());
  }

  private static Map<String, Integer> ids(List<Word> words) {
    Map<String, Integer> ids = new HashMap<>();
    for (int id = 0; id < words.size(); id++) {
      if (ids.put(words.get(id).spelling(), id) != null) {
        throw new IllegalArgumentException("two entries for " + words.get(id).spelling());
      }
    }
    return ids;
  }

  List<Word> words() {
    return words;
  }

  Optional<Integer> id(String spelling) {
    return Optional.ofNullable(ids.get(spelling));
  }

  MatchingWords passing(ResolvedQuery sought) {
    return search.mayMatch(sought)
        ? kept.get(sought, missing -> new MatchingWords(words, search.matching(sought)))
        : none;
  }

  NearbyWords nearby() {
    return nearby.get();
  }

  /**
   * @throws IllegalArgumentException if there is no such accent
   */
  AccentIndex index(String accent) {
    Lazy<AccentIndex> index = indexes.get(accent);
    if (index == null) {
      throw new IllegalArgumentException("no accent " + accent + " in this edition");
    }
    return index.get();
  }

  /** Indexes the accents that are indexed in another. */
  void prepareAs(Segment other) {
    other.indexes.forEach(
        (accent, index) -> {
          if (index.isMade()) {
            index(accent);
          }
        });
  }
}
