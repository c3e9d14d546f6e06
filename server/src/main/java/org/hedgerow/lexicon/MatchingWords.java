package org.hedgerow.lexicon;

import java.util.List;
import org.roaringbitmap.RoaringBitmap;

/** The words of a segment that pass a query. Immutable. */
final class MatchingWords {
  private final List<Word> words;
  private final RoaringBitmap ids;
  private final Lazy<Tally> tally = new Lazy<>(() -> tally(ids()));

  /**
   * @param words all of the segment
   * @param ids numbers of those that pass
   */
  MatchingWords(List<Word> words, RoaringBitmap ids) {
    this.words = words;
    this.ids = ids;
  }

  /** Their numbers; not to be changed. */
  RoaringBitmap ids() {
    return ids;
  }

  Tally tally() {
    return tally.get();
  }

  /** Of those only that are among others. */
  Tally tallyAmong(RoaringBitmap others) {
    return tally(RoaringBitmap.and(ids, others));
  }

  private Tally tally(RoaringBitmap some) {
    return Tally.of(() -> some.stream().mapToObj(words::get).iterator());
  }
}
