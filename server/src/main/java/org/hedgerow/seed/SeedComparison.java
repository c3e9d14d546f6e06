package org.hedgerow.seed;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.seedlexicon.SeedLexicon;

/**
 * What an edit of the seed changes.
 *
 * @param files that were edited, with the numbers of their rows that came and went
 * @param words that came, went or changed, each in a line that says how
 */
public record SeedComparison(List<String> files, List<String> words) {

  /**
   * Reads all of the edited seed, and makes the words of both.
   *
   * @throws org.hedgerow.seedlexicon.DamagedSeedException if a row can't be read; it says which
   * @throws IllegalArgumentException if a row makes no sense; it says which
   */
  public static SeedComparison of(SeedLexicon before, SeedLexicon edited) {
    List<String> files =
        edited.filesUnlike(before).stream().map(path -> file(path, before, edited)).toList();
    if (files.isEmpty()) {
      return new SeedComparison(files, List.of());
    }
    Map<String, Word> after = words(edited); // first, for it may have mistakes
    return new SeedComparison(files, differences(words(before), after));
  }

  private static String file(String path, SeedLexicon before, SeedLexicon edited) {
    Set<String> old = new HashSet<>(before.lines(path));
    Set<String> now = new HashSet<>(edited.lines(path));
    long came = now.stream().filter(line -> !old.contains(line)).count();
    long went = old.stream().filter(line -> !now.contains(line)).count();
    return "%s: %d %s new or changed, %d gone"
        .formatted(path, came, came == 1 ? "line" : "lines", went);
  }

  private static Map<String, Word> words(SeedLexicon seed) {
    List<AccentCatalogue> accents = SeedCatalogue.weighted(seed);
    Catalogue catalogue = accents.get(0).catalogue();
    SeedCurriculum.read(seed, catalogue);
    SeedSentences.read(seed, catalogue);
    SeedKnowledge.of(seed);
    Map<String, Word> words = new TreeMap<>();
    new SeedWords(seed, accents)
        .words(word -> {})
        .forEach(word -> words.put(word.spelling(), word));
    return words;
  }

  private static List<String> differences(Map<String, Word> before, Map<String, Word> after) {
    Set<String> all = new TreeSet<>(before.keySet());
    all.addAll(after.keySet());
    List<String> lines = new ArrayList<>();
    for (String spelling : all) {
      Word old = before.get(spelling);
      Word now = after.get(spelling);
      if (now == null) {
        lines.add(spelling + " is gone");
      } else if (old == null) {
        lines.add("%s is new: %s".formatted(spelling, said(now)));
      } else {
        differences(old, now).forEach(line -> lines.add("%s %s".formatted(spelling, line)));
      }
    }
    return lines;
  }

  private static List<String> differences(Word before, Word after) {
    List<String> lines = new ArrayList<>();
    if (!said(before).equals(said(after))) {
      lines.add("is said %s, before %s".formatted(said(after), said(before)));
    } else if (!cut(before).equals(cut(after))) {
      lines.add("is cut %s, before %s".formatted(cut(after), cut(before)));
    }
    if (before.commonness() != after.commonness()) {
      lines.add("has commonness %d, before %d".formatted(after.commonness(), before.commonness()));
    }
    if (!tags(before).equals(tags(after))) {
      lines.add("is tagged %s, before %s".formatted(tags(after), tags(before)));
    }
    return lines;
  }

  private static String said(Word word) {
    return word.pronunciations().stream()
        .map(each -> each.accent() + " " + Sound.spaced(each.sounds()))
        .collect(joining("; "));
  }

  private static String cut(Word word) {
    return word.pronunciations().stream().map(SeedComparison::cut).collect(joining("; "));
  }

  private static String cut(Pronunciation said) {
    return said.accent()
        + " "
        + said.alignment().map(Alignment::spans).stream()
            .flatMap(List::stream)
            .map(span -> span.realisation().toString())
            .collect(joining(" "));
  }

  private static String tags(Word word) {
    String tags =
        Stream.concat(Stream.of(""), word.tags().stream().map(SeedComparison::tag))
            .filter(tag -> !tag.isEmpty())
            .collect(joining(", "));
    return tags.isEmpty() ? "with nothing" : tags;
  }

  private static String tag(Tag tag) {
    return tag.value().isEmpty() ? tag.kind() : tag.kind() + " " + tag.value();
  }
}
