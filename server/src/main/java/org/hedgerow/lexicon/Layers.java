package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.roaringbitmap.IntConsumer;
import org.roaringbitmap.PeekableIntIterator;
import org.roaringbitmap.RoaringBitmap;

/**
 * The words of an edition in two layers: those of the first edition, which every edition shares,
 * and over them the few that later editions changed. A changed word hides the one below. So an
 * edition is made in milliseconds and takes hardly any memory.
 */
final class Layers {
  private final Segment below;
  private final Segment above;

  /** Numbers of the words below that don't count any more. */
  private final RoaringBitmap hidden = new RoaringBitmap();

  /** For each word above the number of the word below that it stands before. */
  private final int[] places;

  private final Lazy<List<Word>> all;

  /**
   * @param withdrawn spellings of words that don't count any more
   */
  Layers(Segment below, Segment above, Iterable<String> withdrawn) {
    this.below = below;
    this.above = above;
    withdrawn.forEach(this::hide);
    above.words().forEach(word -> hide(word.spelling()));
    this.places = above.words().stream().mapToInt(this::place).toArray();
    this.all = new Lazy<>(this::mergeAll);
  }

  private void hide(String spelling) {
    below.id(spelling).ifPresent(hidden::add);
  }

  private int place(Word word) {
    int found = Collections.binarySearch(below.words(), word, Order.DEFAULT.comparator());
    return found < 0 ? -found - 1 : found;
  }

  /** All words in the order of {@link Order#DEFAULT}. */
  List<Word> words() {
    return isOneLayer() ? below.words() : all.get();
  }

  private boolean isOneLayer() {
    return above.words().isEmpty() && hidden.isEmpty();
  }

  private List<Word> mergeAll() {
    RoaringBitmap shown = RoaringBitmap.bitmapOfRange(0, below.words().size());
    shown.andNot(hidden);
    RoaringBitmap changed = RoaringBitmap.bitmapOfRange(0, above.words().size());
    return Collections.unmodifiableList(merged(shown, changed));
  }

  Optional<Word> word(String spelling) {
    Optional<Word> changed = above.id(spelling).map(above.words()::get);
    return changed.isPresent()
        ? changed
        : below.id(spelling).filter(id -> !hidden.contains(id)).map(below.words()::get);
  }

  /** The words that pass, in the order of {@link Order#DEFAULT}; a new list. */
  List<Word> find(Sought sought) {
    return merged(shown(sought), changed(sought));
  }

  int count(Sought sought) {
    return RoaringBitmap.andNotCardinality(below.passing(sought).ids(), hidden)
        + changed(sought).getCardinality();
  }

  /** Only what is hidden and what is changed is counted if the words below were counted before. */
  Tally tally(Sought sought) {
    Passing passing = below.passing(sought);
    Tally shown = passing.tally().minus(passing.tallyAmong(hidden));
    return above.words().isEmpty() ? shown : shown.plus(above.passing(sought).tally());
  }

  /** The shapes that words have in an accent, in the order of the alphabet. */
  SortedSet<String> shapes(String accent) {
    SortedSet<String> shapes = new TreeSet<>(below.index(accent).shapes());
    shapes.addAll(above.index(accent).shapes());
    return shapes;
  }

  private RoaringBitmap shown(Sought sought) {
    return RoaringBitmap.andNot(below.passing(sought).ids(), hidden);
  }

  private RoaringBitmap changed(Sought sought) {
    return above.words().isEmpty() ? new RoaringBitmap() : above.passing(sought).ids();
  }

  private List<Word> merged(RoaringBitmap shown, RoaringBitmap changed) {
    List<Word> found = new ArrayList<>(shown.getCardinality() + changed.getCardinality());
    PeekableIntIterator rest = changed.getIntIterator();
    shown.forEach(
        (IntConsumer)
            id -> {
              while (rest.hasNext() && places[rest.peekNext()] <= id) {
                found.add(above.words().get(rest.next()));
              }
              found.add(below.words().get(id));
            });
    while (rest.hasNext()) {
      found.add(above.words().get(rest.next()));
    }
    return found;
  }

  /** Indexes the words above in the accents that somebody has asked for. */
  void prepareChanges() {
    above.prepareAs(below);
  }

  /** Indexes an accent in both layers. */
  void prepare(String accent) {
    below.index(accent);
    above.index(accent);
  }
}
