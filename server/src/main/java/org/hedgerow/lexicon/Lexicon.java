package org.hedgerow.lexicon;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Predicate;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.reading.CheckedWord;

/**
 * One edition of the bank, held in memory with an index over it. Immutable, so that any number of
 * threads read it while the next edition is built.
 *
 * <p>A query answers exactly the words whose check by {@link org.hedgerow.reading.WordChecker}
 * passes. Each accent is indexed when it is first asked for, so that a server starts without those
 * that nobody uses.
 *
 * <p>All editions of a bank share the words of the first and the index over them; each has an index
 * of its own over the words that later editions changed. PronunciationGuesses, how often a spelling
 * is met and our sequence follow from the first edition alone, so that they never shift.
 */
public final class Lexicon {

  private final int edition;
  private final Base base;
  private final WordLayers layers;
  private final Pictures pictures;
  private final Sentences sentences;
  private final Plans plans;

  /** What all editions of a bank share. */
  private record Base(
      int edition,
      Speech speech,
      Segment words,
      PronunciationGuesses guesses,
      Lazy<Inflections> inflections) {

    static Base of(int edition, List<AccentCatalogue> accents, List<Word> words) {
      Speech speech = new Speech(accents);
      Segment segment = new Segment(speech, words);
      return new Base(
          edition,
          speech,
          segment,
          new PronunciationGuesses(speech, segment.words()),
          new Lazy<>(() -> new Inflections(segment.words())));
    }
  }

  /**
   * A first edition.
   *
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
    this.base = Base.of(edition, accents, words);
    this.layers = WordLayers.of(base.speech(), base.words());
    this.pictures = pictures;
    this.sentences = Sentences.NONE;
    this.plans = new Plans(Curriculum.NONE, new DerivedSequences(this));
  }

  private Lexicon(
      int edition,
      Base base,
      WordLayers layers,
      Pictures pictures,
      Sentences sentences,
      Plans plans) {
    this.edition = edition;
    this.base = base;
    this.layers = layers;
    this.pictures = pictures;
    this.sentences = sentences;
    this.plans = plans;
  }

  /**
   * A later edition of the same bank; takes a few milliseconds and leaves this one as it is. The
   * words that are changed are indexed at once in the accents that are in use.
   *
   * @param changes all that is other than in this edition
   */
  public Lexicon edition(int number, Changes changes) {
    return new Lexicon(
        number,
        base,
        layers.with(changes.words(), changes.withdrawn()),
        pictures.and(changes.pictures()),
        changes.sentences().orElse(sentences),
        changes.curriculum().map(plans::with).orElse(plans));
  }

  /** The same edition with these sentences. */
  public Lexicon with(Sentences others) {
    return new Lexicon(edition, base, layers, pictures, others, plans);
  }

  /** The same edition for centres that choose from these rules and sequences. */
  public Lexicon with(Curriculum curriculum) {
    return new Lexicon(edition, base, layers, pictures, sentences, plans.with(curriculum));
  }

  /** The reading rules and the sequences to choose from. */
  public Plans plans() {
    return plans;
  }

  public int edition() {
    return edition;
  }

  /** The number of the edition that this one goes back to. */
  public int firstEdition() {
    return base.edition();
  }

  public Pictures pictures() {
    return pictures;
  }

  /** Those that people have approved. */
  public Sentences sentences() {
    return sentences;
  }

  public Catalogue catalogue() {
    return base.speech().catalogue();
  }

  /**
   * Indexes an accent, which its first question would do else; takes part of a second.
   *
   * @throws IllegalArgumentException if the accent is none of the edition's
   */
  public void prepare(String accent) {
    layers.prepare(accent);
  }

  /** The accents, the one first that is meant where none is named. */
  public List<AccentCatalogue> accents() {
    return base.speech().accents();
  }

  public Optional<AccentCatalogue> accent(String tag) {
    return base.speech().accent(tag);
  }

  /** All words, in the order of {@link Order#DEFAULT}. */
  public List<Word> words() {
    return layers.words();
  }

  public Optional<Word> word(String spelling) {
    return layers.word(spelling);
  }

  /**
   * Common words that are spelt much like another, at most three, the nearest first; none that
   * isn't fit for children.
   */
  public List<String> nearby(String spelling) {
    return layers.nearby(spelling);
  }

  /**
   * The aligner of an accent.
   *
   * @throws IllegalArgumentException if the accent is none of the edition's
   */
  public Aligner aligner(String accent) {
    return base.speech().tools(accent).aligner();
  }

  /**
   * How a word that the bank does not hold is probably said, by what its letters say in other
   * words; empty if no pronunciation comes out.
   *
   * @throws IllegalArgumentException if the accent is none of the edition's
   */
  public Optional<Pronunciation> guess(String spelling, String accent) {
    return base.guesses().guess(spelling, accent);
  }

  /** The inflected forms of the words of the first edition. */
  public Inflections inflections() {
    return base.inflections().get();
  }

  /** A word as the checks see it: an entry of the bank, or with guessed pronunciations. */
  public CheckedWord subject(String spelling) {
    return word(spelling).map(Word::subject).orElseGet(() -> guessed(spelling));
  }

  private CheckedWord guessed(String spelling) {
    List<Pronunciation> guesses =
        base.speech().tags().stream().flatMap(accent -> guess(spelling, accent).stream()).toList();
    return new CheckedWord(
        spelling, guesses, base.speech().known(), Optional.empty(), "", "", false);
  }

  /** How often a realisation is met in the words of common use of the first edition. */
  public int occurrences(String accent, Realisation realisation) {
    return base.words().index(accent).occurrences(realisation);
  }

  /**
   * The words that pass, in the order asked for.
   *
   * @throws IllegalArgumentException if an accent is none of the edition's
   */
  public List<Word> find(WordQuery query) {
    List<Word> found = layers.find(base.speech().sought(query));
    if (query.order() != Order.DEFAULT) {
      found.sort(query.order().comparator());
    }
    return found;
  }

  /**
   * The first of the words that pass, in the order of {@link Order#DEFAULT}, whatever order is
   * asked for.
   *
   * @throws IllegalArgumentException if an accent is none of the edition's
   */
  public List<Word> first(int most, WordQuery query) {
    return layers.first(most, base.speech().sought(query));
  }

  /**
   * Shapes that words have in an accent, as {@link Shape} writes them, in the order of the
   * alphabet.
   *
   * @param wanted tells which of them
   * @throws IllegalArgumentException if the accent is none of the edition's
   */
  public SortedSet<String> shapes(String accent, Predicate<String> wanted) {
    return layers.shapes(accent, wanted);
  }

  /** How many words pass. */
  public int count(WordQuery query) {
    return layers.count(base.speech().sought(query));
  }

  /** What the words that pass are good for. */
  public Tally tally(WordQuery query) {
    return layers.tally(base.speech().sought(query));
  }
}
