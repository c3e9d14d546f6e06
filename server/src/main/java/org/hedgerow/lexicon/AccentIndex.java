package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.phonics.Guesser;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.FalsePairs;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Subject;
import org.roaringbitmap.RoaringBitmap;

/**
 * What one accent makes of the words of an edition: for every realisation the words that hold it,
 * for every shape the words that have it, and for every word its <em>profile</em>: the realisations
 * that any of its pronunciations holds, as bits. A word without a pronunciation of its own in the
 * accent is taken as the accent's parent says it, with the parent's realisations. Words are
 * numbered by their rank.
 */
final class AccentIndex {

  private static final String GUESS = "guess";

  /** An accent is not guessed in from fewer words than this, but as its parent. */
  private static final int ENOUGH_TO_GUESS = 1000;

  private final AccentCatalogue catalogue;
  private final ChainedRealisations realisations;
  private final Aligner aligner;
  private final Lazy<Optional<Guesser>> guesser;
  private final FalsePairs falsePairs;
  private final int endingS;
  private final int never;
  private final int stride;
  private final long[] profiles;
  private final List<RoaringBitmap> holding = new ArrayList<>();
  private final Map<String, RoaringBitmap> shapes = new HashMap<>();
  private final int[] occurrences;

  /**
   * @param chain the accent, its parent and so on
   */
  AccentIndex(List<AccentCatalogue> chain, List<Word> words) {
    this.catalogue = chain.get(0);
    this.realisations = new ChainedRealisations(chain);
    this.aligner = new Aligner(this.catalogue);
    this.guesser = new Lazy<>(() -> learn(chain.get(0), words));
    this.falsePairs = new FalsePairs(this.catalogue.catalogue());
    this.endingS = realisations.size();
    this.never = realisations.size() + 1;
    this.stride = (never >> 6) + 1;
    this.profiles = new long[words.size() * stride];
    this.occurrences = new int[realisations.size()];
    for (int i = 0; i < realisations.size(); i++) {
      holding.add(new RoaringBitmap());
    }
    for (int id = 0; id < words.size(); id++) {
      add(id, words.get(id));
    }
    holding.forEach(RoaringBitmap::runOptimize);
    shapes.values().forEach(RoaringBitmap::runOptimize);
  }

  private void add(int id, Word word) {
    List<Pronunciation> said = word.saidIn(catalogue.accent().tag());
    boolean addedS = endsInAddedS(word);
    if (said.isEmpty()) {
      mark(id, never);
    }
    for (Pronunciation pronunciation : said) {
      pronunciation
          .alignment()
          .ifPresentOrElse(
              alignment -> add(id, word, addedS, alignment, pronunciation.accent()),
              () -> mark(id, never));
    }
    sharedShape(said)
        .ifPresent(shape -> shapes.computeIfAbsent(shape, x -> new RoaringBitmap()).add(id));
  }

  private void add(int id, Word word, boolean addedS, Alignment alignment, String accent) {
    if (alignment.hasSmallMargin() || !falsePairs.in(alignment).isEmpty()) {
      mark(id, never);
    }
    for (Span span : alignment.spans()) {
      int realisation = realisations.number(accent, span.realisation());
      mark(id, addedS && isZ(word, span) ? endingS : realisation);
      holding.get(realisation).add(id);
      if (word.commonness() >= WordQuery.DEFAULT_COMMONNESS) {
        occurrences[realisations.own(realisation)]++;
      }
    }
  }

  /** As {@link Subject#endsInAddedS}, without making a subject of every word. */
  private static boolean endsInAddedS(Word word) {
    return word.spelling().endsWith("s") && word.subject().endsInAddedS();
  }

  private static boolean isZ(Word word, Span span) {
    return Standard.isFinalS(word.spelling(), span)
        && span.correspondence().kind() != CorrespondenceClass.BASIC;
  }

  private static Optional<String> sharedShape(List<Pronunciation> said) {
    String shared = "";
    for (Pronunciation pronunciation : said) {
      String shape = pronunciation.alignment().map(Shape::of).orElse("");
      if (!shared.isEmpty() && !shared.equals(shape)) {
        return Optional.empty();
      }
      shared = shape;
    }
    return Optional.of(shared).filter(shape -> !shape.isEmpty());
  }

  private void mark(int id, int bit) {
    profiles[id * stride + (bit >> 6)] |= 1L << bit;
  }

  AccentCatalogue catalogue() {
    return catalogue;
  }

  Aligner aligner() {
    return aligner;
  }

  Optional<Pronunciation> guess(String spelling) {
    return guesser
        .get()
        .flatMap(learned -> learned.guess(spelling))
        .map(sounds -> Pronunciation.aligned(aligner, spelling, sounds, "", GUESS, false));
  }

  private static Optional<Guesser> learn(AccentCatalogue catalogue, List<Word> words) {
    String accent = catalogue.accent().tag();
    List<Alignment> known =
        words.stream()
            .filter(word -> word.commonness() >= WordQuery.DEFAULT_COMMONNESS)
            .flatMap(word -> word.saidIn(accent).stream())
            .filter(pronunciation -> pronunciation.accent().equals(accent))
            .flatMap(pronunciation -> pronunciation.alignment().stream())
            .toList();
    return known.size() < ENOUGH_TO_GUESS
        ? Optional.empty()
        : Optional.of(new Guesser(catalogue, known));
  }

  /** How often each realisation is met in common words, by its id. */
  int occurrences(Realisation realisation) {
    return occurrences[realisation.id()];
  }

  /** Words of which some pronunciation holds one of the targets; a new bitmap. */
  RoaringBitmap holdingAnyOf(Standard standard) {
    RoaringBitmap[] bitmaps =
        IntStream.range(0, realisations.size())
            .filter(number -> standard.isTarget(realisations.get(number).correspondence()))
            .mapToObj(holding::get)
            .toArray(RoaringBitmap[]::new);
    return RoaringBitmap.or(bitmaps);
  }

  /** Words that have a shape in each of their pronunciations. */
  RoaringBitmap shaped(String shape) {
    return shapes.getOrDefault(shape, new RoaringBitmap());
  }

  /** The bits of a profile that a standard does not allow, its targets aside. */
  long[] blocked(Standard standard) {
    long[] bits = new long[stride];
    for (int number = 0; number < realisations.size(); number++) {
      Realisation realisation = realisations.get(number);
      if (!isAllowed(standard, realisation, false)) {
        set(bits, number);
      }
      if (isZ(realisation) && !isAllowed(standard, realisation, true)) {
        set(bits, endingS);
      }
    }
    set(bits, never);
    return bits;
  }

  private static boolean isZ(Realisation realisation) {
    return realisation.grapheme().text().equals("s")
        && Sound.joined(realisation.sounds()).equals("z");
  }

  private static void set(long[] bits, int bit) {
    bits[bit >> 6] |= 1L << bit;
  }

  private static boolean isAllowed(Standard standard, Realisation realisation, boolean inEnding) {
    return standard.isTarget(realisation.correspondence())
        || standard.allows(realisation, inEnding);
  }

  boolean isReadable(int id, long[] blocked) {
    int offset = id * stride;
    for (int i = 0; i < stride; i++) {
      if ((profiles[offset + i] & blocked[i]) != 0) {
        return false;
      }
    }
    return true;
  }
}
