package org.hedgerow.lexicon;

import static java.util.stream.Collectors.toCollection;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.roaringbitmap.PeekableIntIterator;
import org.roaringbitmap.RoaringBitmap;

/**
 * The words of an edition in layers: lowest those of the first edition, which every edition shares,
 * and over them the few that later editions changed. A changed word hides the one below. So an
 * edition is made in a millisecond and takes hardly any memory.
 *
 * <p>A layer that has grown to a good part of the one below it is made one with it, except with the
 * lowest: so there are only a handful, and each word is seldom indexed again. This is how
 * log-structured merge-trees grow (O'Neil and others, 1996). Immutable.
 */
final class WordLayers {

  /** A layer is made one with the next if that is not more than so many times as large. */
  private static final int MERGED_UP_TO = 4;

  private static final Comparator<Word> ORDER = Order.DEFAULT.comparator();

  private final Speech speech;
  private final List<Layer> layers;
  private final Lazy<List<Word>> all;

  /**
   * @param hidden numbers of the words of the segment that don't count any more; not to be changed
   */
  private record Layer(Segment segment, RoaringBitmap hidden) {

    Layer(Segment segment) {
      this(segment, new RoaringBitmap());
    }

    int size() {
      return segment.words().size() - hidden.getCardinality();
    }

    Layer hiding(Set<String> spellings) {
      RoaringBitmap more = new RoaringBitmap();
      spellings.forEach(spelling -> segment.id(spelling).ifPresent(more::add));
      return more.isEmpty() ? this : new Layer(segment, RoaringBitmap.or(hidden, more));
    }

    Optional<Word> word(String spelling) {
      return segment.id(spelling).filter(id -> !hidden.contains(id)).map(segment.words()::get);
    }

    List<Word> words() {
      return words(RoaringBitmap.bitmapOfRange(0, segment.words().size()), Integer.MAX_VALUE);
    }

    List<Word> find(ResolvedQuery sought) {
      return first(Integer.MAX_VALUE, sought);
    }

    List<Word> first(int most, ResolvedQuery sought) {
      return words(segment.passing(sought).ids(), most);
    }

    /** Those of some words that aren't hidden; a new list. */
    private List<Word> words(RoaringBitmap ids, int most) {
      PeekableIntIterator shown = RoaringBitmap.andNot(ids, hidden).getIntIterator();
      List<Word> words = new ArrayList<>();
      while (shown.hasNext() && words.size() < most) {
        words.add(segment.words().get(shown.next()));
      }
      return words;
    }

    Stream<NearbyWords.Neighbour> nearby(String spelling) {
      return segment.nearby().to(spelling).stream().filter(near -> shows(near.word()));
    }

    private boolean shows(Word word) {
      return !hidden.contains(segment.id(word.spelling()).orElseThrow());
    }

    int count(ResolvedQuery sought) {
      return RoaringBitmap.andNotCardinality(segment.passing(sought).ids(), hidden);
    }

    /** Only what is hidden is counted if the words were counted before. */
    Tally tally(ResolvedQuery sought) {
      MatchingWords passing = segment.passing(sought);
      return hidden.isEmpty() ? passing.tally() : passing.tally().minus(passing.tallyAmong(hidden));
    }
  }

  private WordLayers(Speech speech, List<Layer> layers) {
    this.speech = speech;
    this.layers = List.copyOf(layers);
    this.all = new Lazy<>(this::merged);
  }

  /** The words of a first edition. */
  static WordLayers of(Speech speech, Segment first) {
    return new WordLayers(speech, List.of(new Layer(first)));
  }

  /** These words with some changes; those are indexed at once in the accents that are in use. */
  WordLayers with(List<Word> changed, Set<String> withdrawn) {
    Set<String> gone = changed.stream().map(Word::spelling).collect(toCollection(HashSet::new));
    gone.addAll(withdrawn);
    List<Layer> next = new ArrayList<>();
    layers.forEach(layer -> next.add(layer.hiding(gone)));
    if (!changed.isEmpty()) {
      addOnTop(changed, next);
    }
    return new WordLayers(speech, next);
  }

  private void addOnTop(List<Word> changed, List<Layer> next) {
    List<Word> top = new ArrayList<>(changed);
    while (next.size() > 1 && next.get(next.size() - 1).size() <= MERGED_UP_TO * top.size()) {
      top.addAll(next.remove(next.size() - 1).words());
    }
    Segment segment = new Segment(speech, top);
    segment.prepareAs(lowest());
    next.add(new Layer(segment));
  }

  private Segment lowest() {
    return layers.get(0).segment();
  }

  /** All words in the order of {@link Order#DEFAULT}. */
  List<Word> words() {
    boolean untouched = layers.size() == 1 && layers.get(0).hidden().isEmpty();
    return untouched ? lowest().words() : all.get();
  }

  private List<Word> merged() {
    return Collections.unmodifiableList(merged(Layer::words));
  }

  /**
   * Some words of each layer, in the order of {@link Order#DEFAULT}; a new list.
   *
   * @param some of a layer, in that order
   */
  private List<Word> merged(Function<Layer, List<Word>> some) {
    List<Word> merged = new ArrayList<>();
    for (Layer layer : layers) {
      merged = merged(merged, some.apply(layer));
    }
    return merged;
  }

  /** Of two lists in order; the second is mostly much the shorter. */
  private static List<Word> merged(List<Word> many, List<Word> few) {
    if (many.isEmpty() || few.isEmpty()) {
      return many.isEmpty() ? few : many;
    }
    List<Word> merged = new ArrayList<>(many.size() + few.size());
    int read = 0;
    for (Word word : few) {
      int found = Collections.binarySearch(many, word, ORDER);
      int place = found < 0 ? -found - 1 : found;
      merged.addAll(many.subList(read, place));
      merged.add(word);
      read = place;
    }
    merged.addAll(many.subList(read, many.size()));
    return merged;
  }

  Optional<Word> word(String spelling) {
    for (Layer layer : layers) {
      Optional<Word> word = layer.word(spelling);
      if (word.isPresent()) {
        return word;
      }
    }
    return Optional.empty();
  }

  /** Words that are spelt much like another, the nearest first. */
  List<String> nearby(String spelling) {
    return NearbyWords.nearest(layers.stream().flatMap(layer -> layer.nearby(spelling)));
  }

  /** The words that pass, in the order of {@link Order#DEFAULT}; a new list. */
  List<Word> find(ResolvedQuery sought) {
    return merged(layer -> layer.find(sought));
  }

  /** The first of those words. */
  List<Word> first(int most, ResolvedQuery sought) {
    List<Word> found = merged(layer -> layer.first(most, sought));
    return found.subList(0, Math.min(most, found.size()));
  }

  int count(ResolvedQuery sought) {
    return layers.stream().mapToInt(layer -> layer.count(sought)).sum();
  }

  Tally tally(ResolvedQuery sought) {
    Tally sum = Tally.NONE;
    for (Layer layer : layers) {
      sum = sum.plus(layer.tally(sought));
    }
    return sum;
  }

  /** The wanted ones of the shapes that words have in an accent, in the order of the alphabet. */
  SortedSet<String> shapes(String accent, Predicate<String> wanted) {
    return layers.stream()
        .flatMap(layer -> layer.segment().index(accent).shapes().stream())
        .filter(wanted)
        .collect(toCollection(TreeSet::new));
  }

  /** Indexes an accent in all layers. */
  void prepare(String accent) {
    layers.forEach(layer -> layer.segment().index(accent));
  }
}
