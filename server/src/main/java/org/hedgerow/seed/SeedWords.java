package org.hedgerow.seed;

import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Arpabet;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.seedlexicon.CarefulRow;
import org.hedgerow.seedlexicon.DictionaryEntry;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.seedlexicon.VariantRow;

/** Makes the words of the first edition: every entry of the dictionary, aligned and tagged. */
public final class SeedWords {

  /** The number of the edition that the seed makes. */
  public static final int FIRST_EDITION = 1;

  private static final String SOURCE = "cmudict";

  private final List<DictionaryEntry> dictionary;
  private final Aligner aligner;
  private final SpokenWords elsewhere;
  private final Commonness commonness;
  private final WordTags tags;
  private final Set<VariantRow> variantsAside;
  private final Map<VariantRow, String> careful;

  /**
   * @param accents of the seed; the first is the one that the dictionary is in, {@code en-US}
   */
  public SeedWords(SeedLexicon seed, List<AccentCatalogue> accents) {
    this.dictionary = seed.dictionary();
    this.aligner = new Aligner(accents.get(0));
    this.elsewhere = new SpokenWords(seed, accents);
    this.commonness = new Commonness(seed.commonness());
    this.tags = new WordTags(seed);
    this.variantsAside = Set.copyOf(seed.variantsAside());
    this.careful =
        Stream.concat(seed.careful().stream(), seed.corrections().stream())
            .collect(toMap(row -> new VariantRow(row.word(), row.arpabet()), CarefulRow::careful));
  }

  /** How many words there are. */
  public int count() {
    return dictionary.size();
  }

  /**
   * All words, in the dictionary's order. Aligning uses every processor.
   *
   * @param progress told each word as it is done, from any thread
   */
  public List<Word> words(Consumer<Word> progress) {
    return AllProcessors.map(
        dictionary,
        entry -> {
          Word word = word(entry);
          progress.accept(word);
          return word;
        });
  }

  private Word word(DictionaryEntry entry) {
    return new Word(
        entry.word(),
        Status.SEEDED,
        commonness.of(entry.word()),
        FIRST_EDITION,
        tags.of(entry.word()),
        pronunciations(entry));
  }

  private List<Pronunciation> pronunciations(DictionaryEntry entry) {
    List<Pronunciation> pronunciations = new ArrayList<>();
    said(entry).forEach(phones -> pronunciations.add(pronunciation(entry, phones)));
    pronunciations.addAll(elsewhere.of(entry.word()));
    return pronunciations;
  }

  /** The dictionary's variants, in a teacher's careful speech and without its slips. */
  private List<String> said(DictionaryEntry entry) {
    return entry.pronunciations().stream()
        .map(phones -> careful.getOrDefault(new VariantRow(entry.word(), phones), phones))
        .distinct()
        .toList();
  }

  private Pronunciation pronunciation(DictionaryEntry entry, String phones) {
    List<Sound> sounds =
        Arpabet.toIpa(phones).stream()
            .map(ipa -> aligner.accent().sound(ipa).orElseThrow())
            .toList();
    return Pronunciation.aligned(
        aligner, entry.word(), sounds, phones, SOURCE, isAside(entry, phones));
  }

  /** A variant without any stress is the weak form of a word that another variant gives in full. */
  private boolean isAside(DictionaryEntry entry, String phones) {
    boolean weak =
        !hasStress(phones) && entry.pronunciations().stream().anyMatch(SeedWords::hasStress);
    return weak || variantsAside.contains(new VariantRow(entry.word(), phones));
  }

  private static boolean hasStress(String phones) {
    return phones.indexOf('1') >= 0 || phones.indexOf('2') >= 0;
  }
}
