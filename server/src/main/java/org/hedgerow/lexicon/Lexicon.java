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
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.reading.Subject;
import org.hedgerow.reading.Teaching;
import org.roaringbitmap.IntConsumer;

/**
 * One edition of the bank, held in memory with an index over it. Immutable, so that any number of
 * threads read it while the next edition is built.
 *
 * <p>A query answers exactly the words whose check by {@link org.hedgerow.reading.WordChecker}
 * passes. Each accent is indexed when it is first asked for, so that a server starts without those
 * that nobody uses.
 */
public final class Lexicon {

  private final int edition;
  private final Catalogue catalogue;
  private final Accents known;
  private final List<Word> words;
  private final Map<String, Integer> ids = new HashMap<>();
  private final Map<String, AccentCatalogue> accents = new LinkedHashMap<>();
  private final Map<String, Lazy<AccentIndex>> indexes = new HashMap<>();
  private final Search search;
  private final Pictures pictures;
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
    for (AccentCatalogue each : accents) {
      String tag = each.accent().tag();
      this.accents.put(tag, each);
      indexes.put(tag, new Lazy<>(() -> new AccentIndex(chain(tag, accents), this.words)));
    }
    this.search = new Search(this.words, this::index);
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
    this.search = same.search;
    this.pictures = same.pictures;
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
    search.matching(query).forEach((IntConsumer) id -> found.add(words.get(id)));
    if (query.order() != Order.DEFAULT) {
      found.sort(query.order().comparator());
    }
    return found;
  }

  /** How many words pass. */
  public int count(WordQuery query) {
    return search.matching(query).getCardinality();
  }

  private AccentIndex index(String accent) {
    Lazy<AccentIndex> index = indexes.get(accent);
    if (index == null) {
      throw new IllegalArgumentException("no accent " + accent + " in this edition");
    }
    return index.get();
  }
}
