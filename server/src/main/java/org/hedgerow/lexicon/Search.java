package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.Switch;
import org.roaringbitmap.IntConsumer;
import org.roaringbitmap.RoaringBitmap;

/**
 * Finds the words that a query asks for. It intersects bitmaps (what holds the target, what has the
 * shape, what is common enough) and tests the words that are left against the standard by their
 * profiles. Words are numbered by their rank.
 */
final class Search {

  private static final List<String> LEFT_OUT = List.of(Tag.NAME, Tag.NOT_FOR_CHILDREN);

  private final List<Word> words;
  private final Function<String, AccentIndex> accents;
  private final TagIndex tags;
  private final Map<Integer, RoaringBitmap> byCommonness = new HashMap<>();
  private final Map<Status, RoaringBitmap> byStatus = new HashMap<>();

  /**
   * @param accents gives the index of an accent by its tag
   */
  Search(List<Word> words, Function<String, AccentIndex> accents) {
    this.words = words;
    this.accents = accents;
    this.tags = new TagIndex(words);
    for (int id = 0; id < words.size(); id++) {
      bitmap(byCommonness, words.get(id).commonness()).add(id);
      bitmap(byStatus, words.get(id).status()).add(id);
    }
  }

  private static <K> RoaringBitmap bitmap(Map<K, RoaringBitmap> bitmaps, K key) {
    return bitmaps.computeIfAbsent(key, missing -> new RoaringBitmap());
  }

  /**
   * Whether any word holds the target and has the shape: no is the answer to most questions about
   * the few words that an edition changed.
   */
  boolean mayMatch(ResolvedQuery sought) {
    boolean anyTarget = sought.query().standard().targets().isEmpty();
    Optional<String> shape = sought.query().shape();
    for (AccentStandard accent : sought.accents()) {
      AccentIndex index = accents.apply(accent.accent());
      if (!anyTarget && index.holdsNone(accent.targets())) {
        return false;
      }
      if (shape.isPresent() && !index.shapes().contains(shape.get())) {
        return false;
      }
    }
    return true;
  }

  /** The numbers of the words that pass; a new bitmap. */
  RoaringBitmap matching(ResolvedQuery sought) {
    RoaringBitmap matching = passing(sought, candidates(sought));
    sought.differsIn().ifPresent(there -> matching.andNot(alike(sought.in(there), matching)));
    return matching;
  }

  /** Of some words those that pass in another accent too, or of which it isn't known. */
  private RoaringBitmap alike(ResolvedQuery there, RoaringBitmap words) {
    RoaringBitmap alike = words.clone();
    keepInAccents(there, alike);
    alike = passing(there, alike);
    for (int id : words) {
      if (this.words.get(id).said(there.query().accents()).isEmpty()) {
        alike.add(id);
      }
    }
    return alike;
  }

  private RoaringBitmap passing(ResolvedQuery sought, RoaringBitmap from) {
    RoaringBitmap candidates = from;
    for (AccentStandard accent : sought.accents()) {
      candidates = readable(candidates, accents.apply(accent.accent()), accent.blocked());
    }
    RoaringBitmap matching = new RoaringBitmap();
    candidates.forEach(
        (IntConsumer)
            id -> {
              if (fits(words.get(id), sought.query())) {
                matching.add(id);
              }
            });
    return matching;
  }

  private RoaringBitmap candidates(ResolvedQuery sought) {
    WordQuery query = sought.query();
    RoaringBitmap candidates = commonEnough(query.commonness());
    query
        .status()
        .ifPresent(status -> candidates.and(byStatus.getOrDefault(status, new RoaringBitmap())));
    tags.keep(query.tags(), candidates);
    keepInAccents(sought, candidates);
    leftOut(query).forEach(kind -> candidates.andNot(tags.of(kind)));
    if (!query.include().contains(Tag.REGION)) {
      sought.accents().forEach(each -> tags.dropOtherSpellings(each.spelling(), candidates));
    }
    return candidates;
  }

  /** Keeps of some words those that hold the target, and have the shape, in every accent. */
  private void keepInAccents(ResolvedQuery sought, RoaringBitmap words) {
    for (AccentStandard accent : sought.accents()) {
      AccentIndex index = accents.apply(accent.accent());
      if (!sought.query().standard().targets().isEmpty()) {
        words.and(index.holdingAnyOf(accent.targets()));
      }
      sought.query().shape().ifPresent(shape -> words.and(index.shaped(shape)));
    }
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
      if (!fitsSyllables(pronunciation, query)
          || !fitsTarget(pronunciation, query)
          || !fitsRime(pronunciation, query)) {
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

  private static boolean fitsRime(Pronunciation pronunciation, WordQuery query) {
    return query.rimes().isEmpty()
        || pronunciation.alignment().flatMap(Rime::of).filter(query.rimes()::contains).isPresent();
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
}
