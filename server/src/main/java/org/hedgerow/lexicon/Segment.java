package org.hedgerow.lexicon;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.roaringbitmap.RoaringBitmap;

/**
 * Some words of a bank with an index over them, in the order of {@link Order#DEFAULT}: they are
 * numbered by their rank. Each accent is indexed when it is first asked for. Immutable.
 */
final class Segment {
  private final List<Word> words;
  private final Map<String, Integer> ids;
  private final Map<String, Lazy<AccentIndex>> indexes = new HashMap<>();
  private final Search search;

  /**
   * @param words in any order, each spelling once
   */
  Segment(Speech speech, List<Word> words) {
    this.words =
        words.parallelStream()
            .sorted(Order.DEFAULT.comparator())
            .map(word -> word.among(speech.known()))
            .toList();
    this.ids = ids(this.words);
    for (String tag : speech.tags()) {
      indexes.put(tag, new Lazy<>(() -> new AccentIndex(speech.tools(tag), this.words)));
    }
    this.search = new Search(this.words, this::index);
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

  /**
   * The numbers of the words that pass; a new bitmap.
   *
   * @param narrow takes words away from those to look at
   */
  RoaringBitmap matching(Sought sought, Consumer<RoaringBitmap> narrow) {
    return search.matching(sought, narrow);
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

  /** Indexes every accent. */
  void prepare() {
    indexes.values().forEach(Lazy::get);
  }
}
