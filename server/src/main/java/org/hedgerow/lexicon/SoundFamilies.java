package org.hedgerow.lexicon;

import static java.util.Comparator.comparingInt;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;

/** Puts the sound families of one accent together. */
public final class SoundFamilies {

  private final Lexicon lexicon;
  private final AccentCatalogue accent;
  private final Map<Correspondence, Tally> counts;
  private final RealisationExamples examples;

  /**
   * @param tag of an accent of the lexicon
   * @param counts how many words the default list of each value has
   */
  public SoundFamilies(Lexicon lexicon, String tag, Map<Correspondence, Tally> counts) {
    this.lexicon = lexicon;
    this.accent = lexicon.accent(tag).orElseThrow();
    this.counts = counts;
    this.examples = new RealisationExamples(lexicon, tag);
  }

  /** One for each sound of the accent, in the order of its inventory. */
  public Map<Sound, SoundFamily> families() {
    Map<Sound, SoundFamily> families = new LinkedHashMap<>();
    accent.accent().inventory().forEach(sound -> families.put(sound, family(sound)));
    return Collections.unmodifiableMap(families);
  }

  private SoundFamily family(Sound sound) {
    List<Realisation> spelt =
        accent.realisations().stream()
            .filter(each -> each.sounds().equals(List.of(sound)) && isMet(each))
            .sorted(comparingInt(this::occurrences).reversed())
            .toList();
    int all = spelt.stream().mapToInt(this::occurrences).sum();
    List<SoundFamily.Spelling> spellings = spelt.stream().map(each -> spelling(each, all)).toList();
    String keyWord = spellings.isEmpty() ? "" : spellings.get(0).keyWord();
    return new SoundFamily(sound, examples.arpabet(sound), keyWord, spellings);
  }

  /** Taught values are shown even where no common word has them. */
  private boolean isMet(Realisation realisation) {
    return occurrences(realisation) > 0 || realisation.correspondence().isTaught();
  }

  private int occurrences(Realisation realisation) {
    return lexicon.occurrences(accent.accent().tag(), realisation);
  }

  private SoundFamily.Spelling spelling(Realisation realisation, int all) {
    Correspondence correspondence = realisation.correspondence();
    List<String> words = examples.of(realisation);
    return new SoundFamily.Spelling(
        correspondence,
        keyWord(realisation, words),
        all == 0 ? 0 : (double) occurrences(realisation) / all,
        words(correspondence),
        words);
  }

  /** The key word of a correspondence shows the first of the ways in which the accent says it. */
  private String keyWord(Realisation realisation, List<String> words) {
    Correspondence correspondence = realisation.correspondence();
    boolean first = correspondence.soundsIn(accent.accent()).indexOf(realisation.sounds()) == 0;
    return first || words.isEmpty() ? correspondence.keyWord() : words.get(0);
  }

  private OptionalInt words(Correspondence correspondence) {
    return Optional.ofNullable(counts.get(correspondence)).stream()
        .mapToInt(Tally::total)
        .findFirst();
  }
}
