package org.hedgerow.lexicon;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.roaringbitmap.RoaringBitmap;

/** Which words bear which tags. Words are numbered by their rank. */
final class TagIndex {

  /** Kinds of which queries ask for single values. */
  private static final Set<String> BY_VALUE =
      Set.of(Tag.PART_OF_SPEECH, Tag.MEANING, Tag.PICTURABLE, Tag.REGION);

  private final Map<String, RoaringBitmap> byKind = new HashMap<>();
  private final Map<String, Map<String, RoaringBitmap>> byValue = new HashMap<>();

  TagIndex(List<Word> words) {
    for (int id = 0; id < words.size(); id++) {
      for (Tag tag : words.get(id).tags()) {
        add(id, tag);
      }
    }
  }

  private void add(int id, Tag tag) {
    byKind.computeIfAbsent(tag.kind(), missing -> new RoaringBitmap()).add(id);
    if (BY_VALUE.contains(tag.kind())) {
      Map<String, RoaringBitmap> values =
          byValue.computeIfAbsent(tag.kind(), missing -> new HashMap<>());
      for (String value : tag.values()) {
        values.computeIfAbsent(value, missing -> new RoaringBitmap()).add(id);
      }
    }
  }

  /** Words with a tag of this kind; not to be changed. */
  RoaringBitmap of(String kind) {
    return byKind.getOrDefault(kind, new RoaringBitmap());
  }

  private RoaringBitmap of(String kind, String value) {
    return values(kind).getOrDefault(value, new RoaringBitmap());
  }

  private Map<String, RoaringBitmap> values(String kind) {
    return byValue.getOrDefault(kind, Map.of());
  }

  /** Keeps of some words those that a filter lets through. */
  void keep(TagFilter filter, RoaringBitmap words) {
    if (filter.picturable() > 0) {
      words.and(picturable(filter.picturable()));
    }
    if (filter.pictured()) {
      words.and(of(Tag.PICTURE));
    }
    if (filter.starter()) {
      words.and(of(Tag.STARTER));
    }
    filter.partOfSpeech().ifPresent(part -> words.and(of(Tag.PART_OF_SPEECH, part.label())));
    if (!filter.meanings().isEmpty()) {
      words.and(meaning(filter.meanings()));
    }
  }

  private RoaringBitmap picturable(int least) {
    RoaringBitmap picturable = new RoaringBitmap();
    for (int level = least; level <= TagFilter.MAX_PICTURABLE; level++) {
      picturable.or(of(Tag.PICTURABLE, String.valueOf(level)));
    }
    return picturable;
  }

  private RoaringBitmap meaning(Set<Meaning> meanings) {
    RoaringBitmap meaning = new RoaringBitmap();
    meanings.forEach(each -> meaning.or(of(Tag.MEANING, each.label())));
    return meaning;
  }

  /**
   * Takes from some words those that are spelt so only elsewhere.
   *
   * @param spelling the spelling that is wanted; if empty, any will do
   */
  void dropOtherSpellings(String spelling, RoaringBitmap words) {
    if (!spelling.isEmpty()) {
      values(Tag.REGION)
          .forEach(
              (region, spelt) -> {
                if (!region.equals(spelling)) {
                  words.andNot(spelt);
                }
              });
    }
  }
}
