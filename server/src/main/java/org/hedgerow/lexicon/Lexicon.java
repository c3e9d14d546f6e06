package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Accents;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.Subject;
import org.hedgerow.reading.Switch;
import org.hedgerow.reading.Teaching;
import org.roaringbitmap.IntConsumer;
import org.roaringbitmap.RoaringBitmap;

/**
 * One edition of the bank, held in memory with an index over it. Immutable, so that any number of
 * threads read it while the next edition is built.
 *
 * <p>A query intersects bitmaps (what holds the target, what has the shape, what is common enough)
 * and tests the words that are left against the standard by their profiles. It answers exactly the
 * words whose check by {@link org.hedgerow.reading.WordChecker} passes. Each accent is indexed when
 * it is first asked for, so that a server starts without those that nobody uses.
 */
public final class Lexicon {

  private static final List<String> LEFT_OUT = List.of(Tag.NAME, Tag.NOT_FOR_CHILDREN);

  private final int edition;
  private final Catalogue catalogue;
  private final Accents known;
  private final List<Word> words;
  private final Map<String, Integer> ids = new HashMap<>();
  private final Map<String, AccentCatalogue> accents = new LinkedHashMap<>();
  private final Map<String, Lazy<AccentIndex>> indexes = new HashMap<>();
  private final Map<Integer, RoaringBitmap> byCommonness = new HashMap<>();
  private final TagIndex tags;
  private final Pictures pictures;
  private final Map<Status, RoaringBitmap> byStatus = new HashMap<>();
  private final Plans plans;

  /**
   * @param edition the number of the edition
   * @param accents the accents that words may have pronunciations in, at least one, all with one
   *     catalogue; the first is the one that is meant where none is named
   * @param words in any order, each spelling once
   */
  public Lexicon(int edition, List<AccentCatalogue> accents, List<Word> words) {
    this(edition, accents, words, Pictures.NONE);
  }

  /**
   * @param pictures those that the tags of words name
   */
  public Lexicon(int edition, List<AccentCatalogue> accents, List<Word> words, Pictures pictures) {
    this.edition = edition;
    this.pictures = pictures;
    this.catalogue = accents.get(0).catalogue();
    this.known = new Accents(accents.stream().map(AccentCatalogue::accent).toList());
    this.words =
        words.parallelStream()
            .sorted(Order.DEFAULT.comparator())
            .map(word -> word.among(known))
            .toList();
    for (int id = 0; id < this.words.size(); id++) {
      add(id, this.words.get(id));
    }
    this.tags = new TagIndex(this.words);
    for (AccentCatalogue each : accents) {
      String tag = each.accent().tag();
      this.accents.put(tag, each);
      indexes.put(tag, new Lazy<>(() -> new AccentIndex(chain(tag, accents), this.words)));
    }
    this.plans = new Plans(this, Teaching.NONE);
  }

  private Lexicon(Lexicon same, Teaching teaching) {
    this.edition = same.edition;
    this.catalogue = same.catalogue;
    this.known = same.known;
    this.words = same.words;
    this.ids.putAll(same.ids);
    this.accents.putAll(same.accents);
    this.indexes.putAll(same.indexes);
    this.byCommonness.putAll(same.byCommonness);
    this.tags = same.tags;
    this.pictures = same.pictures;
    this.byStatus.putAll(same.byStatus);
    this.plans = new Plans(this, teaching);
  }

  /** The same edition for centres that choose from these rules and sequences. */
  public Lexicon with(Teaching teaching) {
    return new Lexicon(this, teaching);
  }

  /** The reading rules and the sequences to choose from. */
  public Plans plans() {
    return plans;
  }

  /** An accent and those that it falls back on. */
  private List<AccentCatalogue> chain(String tag, List<AccentCatalogue> all) {
    return known.chain(tag).stream()
        .flatMap(each -> all.stream().filter(other -> other.accent().tag().equals(each)))
        .toList();
  }

  private void add(int id, Word word) {
    if (ids.put(word.spelling(), id) != null) {
      throw new IllegalArgumentException("two entries for " + word.spelling());
    }
    bitmap(byCommonness, word.commonness()).add(id);
    bitmap(byStatus, word.status()).add(id);
  }

  private static <K> RoaringBitmap bitmap(Map<K, RoaringBitmap> bitmaps, K key) {
    return bitmaps.computeIfAbsent(key, missing -> new RoaringBitmap());
  }

  public int edition() {
    return edition;
  }

  public Pictures pictures() {
    return pictures;
  }

  public Catalogue catalogue() {
    return catalogue;
  }

  /**
   * Indexes an accent, which its first question would do else; takes part of a second.
   *
   * @throws IllegalArgumentException if the accent is none of the edition's
   */
  public void prepare(String accent) {
    index(accent);
  }

  /** The accents, the one first that is meant where none is named. */
  public List<AccentCatalogue> accents() {
    return List.copyOf(accents.values());
  }

  public Optional<AccentCatalogue> accent(String tag) {
    return Optional.ofNullable(accents.get(tag));
  }

  /** All words, in the order of {@link Order#DEFAULT}. */
  public List<Word> words() {
    return words;
  }

  public Optional<Word> word(String spelling) {
    return Optional.ofNullable(ids.get(spelling)).map(words::get);
  }

  /**
   * The aligner of an accent.
   *
   * @throws IllegalArgumentException if the accent is none of the edition's
   */
  public Aligner aligner(String accent) {
    return index(accent).aligner();
  }

  /**
   * How a word that the bank does not hold is probably said, by what its letters say in other
   * words; empty if no pronunciation comes out.
   *
   * @throws IllegalArgumentException if the accent is none of the edition's
   */
  public Optional<Pronunciation> guess(String spelling, String accent) {
    return index(accent).guess(spelling);
  }

  /** A word as the checks see it: an entry of the bank, or with guessed pronunciations. */
  public Subject subject(String spelling) {
    return word(spelling).map(Word::subject).orElseGet(() -> guessed(spelling));
  }

  private Subject guessed(String spelling) {
    List<Pronunciation> guesses =
        accents.keySet().stream().flatMap(accent -> guess(spelling, accent).stream()).toList();
    return new Subject(spelling, guesses, known, Optional.empty(), "", "", false);
  }

  /** How often a realisation is met in the words of common use. */
  public int occurrences(String accent, Realisation realisation) {
    return index(accent).occurrences(realisation);
  }

  /**
   * The words that pass, in the order asked for.
   *
   * @throws IllegalArgumentException if an accent is none of the edition's
   */
  public List<Word> find(WordQuery query) {
    List<Word> found = new ArrayList<>();
    matching(query).forEach((IntConsumer) id -> found.add(words.get(id)));
    if (query.order() != Order.DEFAULT) {
      found.sort(query.order().comparator());
    }
    return found;
  }

  /** How many words pass. */
  public int count(WordQuery query) {
    return matching(query).getCardinality();
  }

  private RoaringBitmap matching(WordQuery query) {
    RoaringBitmap matching = passing(query, candidates(query));
    query.differsIn().ifPresent(accent -> matching.andNot(alike(query, accent, matching)));
    return matching;
  }

  /** Of some words those that pass in another accent too, or of which it isn't known. */
  private RoaringBitmap alike(WordQuery query, String accent, RoaringBitmap words) {
    WordQuery there = query.withAccents(List.of(accent));
    RoaringBitmap alike = words.clone();
    keepInAccents(there, alike);
    alike = passing(there, alike);
    for (int id : words) {
      if (this.words.get(id).said(there.accents()).isEmpty()) {
        alike.add(id);
      }
    }
    return alike;
  }

  private RoaringBitmap passing(WordQuery query, RoaringBitmap from) {
    RoaringBitmap candidates = from;
    for (String accent : query.accents()) {
      AccentIndex index = index(accent);
      candidates = readable(candidates, index, index.blocked(query.standard()));
    }
    RoaringBitmap matching = new RoaringBitmap();
    candidates.forEach(
        (IntConsumer)
            id -> {
              if (fits(words.get(id), query)) {
                matching.add(id);
              }
            });
    return matching;
  }

  private RoaringBitmap candidates(WordQuery query) {
    RoaringBitmap candidates = commonEnough(query.commonness());
    query
        .status()
        .ifPresent(status -> candidates.and(byStatus.getOrDefault(status, new RoaringBitmap())));
    tags.keep(query.tags(), candidates);
    keepInAccents(query, candidates);
    leftOut(query).forEach(kind -> candidates.andNot(tags.of(kind)));
    if (!query.include().contains(Tag.REGION)) {
      query.accents().forEach(tag -> tags.dropOtherSpellings(spelling(tag), candidates));
    }
    return candidates;
  }

  /** Keeps of some words those that hold the target, and have the shape, in every accent. */
  private void keepInAccents(WordQuery query, RoaringBitmap words) {
    for (String accent : query.accents()) {
      AccentIndex index = index(accent);
      if (!query.standard().targets().isEmpty()) {
        words.and(index.holdingAnyOf(query.standard()));
      }
      query.shape().ifPresent(shape -> words.and(index.shaped(shape)));
    }
  }

  private String spelling(String accent) {
    return index(accent).catalogue().accent().spelling();
  }

  private RoaringBitmap commonEnough(int least) {
    RoaringBitmap common = new RoaringBitmap();
    byCommonness.forEach(
        (level, bitmap) -> {
          if (level >= least) {
            common.or(bitmap);
          }
        });
    return common;
  }

  private static List<String> leftOut(WordQuery query) {
    List<String> kinds = new ArrayList<>(LEFT_OUT);
    if (!query.standard().rules().allow(Switch.INFLECTED_FORMS)) {
      kinds.add(Tag.INFLECTED);
    }
    kinds.removeAll(query.include());
    return kinds;
  }

  private static RoaringBitmap readable(
      RoaringBitmap candidates, AccentIndex index, long[] blocked) {
    RoaringBitmap readable = new RoaringBitmap();
    candidates.forEach(
        (IntConsumer)
            id -> {
              if (index.isReadable(id, blocked)) {
                readable.add(id);
              }
            });
    return readable;
  }

  private static boolean fits(Word word, WordQuery query) {
    if (!fitsSpelling(word.spelling(), query)) {
      return false;
    }
    for (Pronunciation pronunciation : word.said(query.accents())) {
      if (!fitsSyllables(pronunciation, query) || !fitsTarget(pronunciation, query)) {
        return false;
      }
    }
    return true;
  }

  private static boolean fitsSpelling(String spelling, WordQuery query) {
    return query.letterCount().map(range -> range.contains(spelling.length())).orElse(true)
        && query.onlyLetters().map(letters -> isMadeOf(spelling, letters)).orElse(true);
  }

  private static boolean isMadeOf(String spelling, String letters) {
    return spelling.chars().allMatch(letter -> letters.indexOf(letter) >= 0);
  }

  private static boolean fitsSyllables(Pronunciation pronunciation, WordQuery query) {
    return query.syllables().map(range -> range.contains(pronunciation.syllables())).orElse(true);
  }

  private static boolean fitsTarget(Pronunciation pronunciation, WordQuery query) {
    return query.standard().targets().isEmpty()
        || pronunciation.alignment().map(alignment -> holdsOnce(alignment, query)).orElse(false);
  }

  private static boolean holdsOnce(Alignment alignment, WordQuery query) {
    Span target = null;
    for (Span span : alignment.spans()) {
      if (query.standard().isTarget(span.correspondence())) {
        if (target != null) {
          return false;
        }
        target = span;
      }
    }
    return target != null && isHeardWhereAsked(alignment, target, query);
  }

  private static boolean isHeardWhereAsked(Alignment alignment, Span target, WordQuery query) {
    return query.position().isEmpty() || query.position().get().holds(alignment, target);
  }

  private AccentIndex index(String accent) {
    Lazy<AccentIndex> index = indexes.get(accent);
    if (index == null) {
      throw new IllegalArgumentException("no accent " + accent + " in this edition");
    }
    return index.get();
  }
}
