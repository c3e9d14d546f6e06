package org.hedgerow.lexicon;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.CheckedWord;
import org.hedgerow.reading.Standard;
import org.jspecify.annotations.Nullable;
import org.roaringbitmap.RoaringBitmap;

/**
 * What one accent makes of some words: for every realisation the words that hold it, for every
 * shape the words that have it, and for every word its profile: the numbers of the realisations
 * that any of its pronunciations holds. A word without a pronunciation of its own in the accent is
 * taken as the accent's parent says it, with the parent's realisations. Words are numbered by their
 * rank.
 */
final class AccentIndex {
  private final AccentTools tools;
  private final ChainedRealisations realisations;
  private final Profiles profiles;
  private final @Nullable RoaringBitmap[] holding;
  private final Map<String, RoaringBitmap> shapes = new HashMap<>();
  private final int[] occurrences;

  AccentIndex(AccentTools tools, List<Word> words) {
    this.tools = tools;
    this.realisations = tools.realisations();
    this.profiles = new Profiles(words.size());
    this.holding = new RoaringBitmap[realisations.size()];
    this.occurrences = new int[realisations.size()];
    for (int id = 0; id < words.size(); id++) {
      add(id, words.get(id));
      profiles.endWord();
    }
    Arrays.stream(holding).filter(Objects::nonNull).forEach(RoaringBitmap::runOptimize);
    shapes.values().forEach(RoaringBitmap::runOptimize);
  }

  private void add(int id, Word word) {
    List<Pronunciation> said = word.saidIn(tools.catalogue().accent().tag());
    boolean addedS = endsInAddedS(word);
    if (said.isEmpty()) {
      profiles.mark(tools.never());
    }
    for (Pronunciation pronunciation : said) {
      pronunciation
          .alignment()
          .ifPresentOrElse(
              alignment -> add(id, word, addedS, alignment, pronunciation.accent()),
              () -> profiles.mark(tools.never()));
    }
    sharedShape(said)
        .ifPresent(shape -> shapes.computeIfAbsent(shape, x -> new RoaringBitmap()).add(id));
  }

  private void add(int id, Word word, boolean addedS, Alignment alignment, String accent) {
    if (alignment.hasSmallMargin() || !tools.falsePairs().in(alignment).isEmpty()) {
      profiles.mark(tools.never());
    }
    for (Span span : alignment.spans()) {
      int realisation = realisations.number(accent, span.realisation());
      profiles.mark(addedS && isZ(word, span) ? tools.endingS() : realisation);
      holding(realisation).add(id);
      if (word.commonness() >= WordQuery.DEFAULT_COMMONNESS) {
        occurrences[realisations.own(realisation)]++;
      }
    }
  }

  private RoaringBitmap holding(int realisation) {
    RoaringBitmap words = holding[realisation];
    if (words == null) {
      words = new RoaringBitmap();
      holding[realisation] = words;
    }
    return words;
  }

  /** As {@link CheckedWord#endsInAddedS}, without making a subject of every word. */
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

  /** How often each realisation is met in common words, by its id. */
  int occurrences(Realisation realisation) {
    return occurrences[realisation.id()];
  }

  boolean holdsNone(int[] targets) {
    for (int number : targets) {
      if (holding[number] != null) {
        return false;
      }
    }
    return true;
  }

  /** Words of which some pronunciation holds one of the targets; a new bitmap. */
  RoaringBitmap holdingAnyOf(int[] targets) {
    return RoaringBitmap.or(
        Arrays.stream(targets)
            .mapToObj(number -> holding[number])
            .filter(Objects::nonNull)
            .toArray(RoaringBitmap[]::new));
  }

  /** The shapes that some words have. */
  Set<String> shapes() {
    return Collections.unmodifiableSet(shapes.keySet());
  }

  /** Words that have a shape in each of their pronunciations. */
  RoaringBitmap shaped(String shape) {
    return shapes.getOrDefault(shape, new RoaringBitmap());
  }

  /**
   * @param blocked a bit for each number of a profile
   */
  boolean isReadable(int id, long[] blocked) {
    return !profiles.holdsAnyOf(id, blocked);
  }
}
