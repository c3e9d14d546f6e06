package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * that any of its pronunciations holds, as bits. Words are numbered by their rank.
 */
final class AccentIndex {

  private static final String GUESS = "guess";

  private final AccentCatalogue catalogue;
  private final Aligner aligner;
  private final Lazy<Guesser> guesser;
  private final FalsePairs falsePairs;
  private final int endingS;
  private final int never;
  private final int stride;
  private final long[] profiles;
  private final List<RoaringBitmap> holding = new ArrayList<>();
  private final Map<String, RoaringBitmap> shapes = new HashMap<>();
  private final int[] occurrences;

  AccentIndex(AccentCatalogue catalogue, List<Word> words) {
    this.catalogue = catalogue;
    this.aligner = new Aligner(catalogue);
    this.guesser = new Lazy<>(() -> learn(catalogue, words));
    this.falsePairs = new FalsePairs(catalogue.catalogue());
    int realisations = catalogue.realisations().size();
    this.endingS = realisations;
    this.never = realisations + 1;
    this.stride = (never >> 6) + 1;
    this.profiles = new long[words.size() * stride];
    this.occurrences = new int[realisations];
    for (int i = 0; i < realisations; i++) {
      holding.add(new RoaringBitmap());
    }
    for (int id = 0; id < words.size(); id++) {
      add(id, words.get(id));
    }
    holding.forEach(RoaringBitmap::runOptimize);
    shapes.values().forEach(RoaringBitmap::runOptimize);
  }

  private void add(int id, Word word) {
    Subject subject = word.subject();
    List<Pronunciation> said = subject.saidIn(catalogue.accent().tag());
    if (said.isEmpty()) {
      mark(id, never);
    }
    for (Pronunciation pronunciation : said) {
      pronunciation
          .alignment()
          .ifPresentOrElse(alignment -> add(id, word, subject, alignment), () -> mark(id, never));
    }
    sharedShape(said)
        .ifPresent(shape -> shapes.computeIfAbsent(shape, x -> new RoaringBitmap()).add(id));
  }

  private void add(int id, Word word, Subject subject, Alignment alignment) {
    if (alignment.hasSmallMargin() || !falsePairs.in(alignment).isEmpty()) {
      mark(id, never);
    }
    for (Span span : alignment.spans()) {
      int realisation = span.realisation().id();
      mark(id, isAddedZ(subject, span) ? endingS : realisation);
      holding.get(realisation).add(id);
      if (word.commonness() >= WordQuery.DEFAULT_COMMONNESS) {
        occurrences[realisation]++;
      }
    }
  }

  private static boolean isAddedZ(Subject subject, Span span) {
    return subject.endsInAddedS()
        && Standard.isFinalS(subject.spelling(), span)
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
        .guess(spelling)
        .map(sounds -> Pronunciation.aligned(aligner, spelling, sounds, "", GUESS, false));
  }

  private static Guesser learn(AccentCatalogue catalogue, List<Word> words) {
    List<Alignment> known =
        words.stream()
            .filter(word -> word.commonness() >= WordQuery.DEFAULT_COMMONNESS)
            .flatMap(word -> word.said(List.of(catalogue.accent().tag())).stream())
            .flatMap(pronunciation -> pronunciation.alignment().stream())
            .toList();
    return new Guesser(catalogue, known);
  }

  /** How often each realisation is met in common words, by its id. */
  int occurrences(Realisation realisation) {
    return occurrences[realisation.id()];
  }

  /** Words of which some pronunciation holds one of the targets; a new bitmap. */
  RoaringBitmap holdingAnyOf(Standard standard) {
    RoaringBitmap[] bitmaps =
        catalogue.realisations().stream()
            .filter(each -> standard.isTarget(each.correspondence()))
            .map(each -> holding.get(each.id()))
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
    for (Realisation realisation : catalogue.realisations()) {
      if (!isAllowed(standard, realisation, false)) {
        set(bits, realisation.id());
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
