package org.hedgerow.seedlexicon;

import static java.util.Objects.requireNonNull;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The seed lexicon: typed readers over the seed files. Every read checks the file against the
 * checksum manifest first and throws {@link DamagedSeedException} if they disagree. Nothing is
 * cached: read a table once and keep what you need. Immutable and safe for use by several threads.
 */
public final class SeedLexicon {
  private final SeedFiles files;
  private final Manifest manifest;
  private final boolean mayBeEdited;

  private SeedLexicon(SeedFiles files, boolean mayBeEdited) {
    this.files = files;
    this.manifest = Manifest.parse(files.content(Manifest.FILE));
    this.mayBeEdited = mayBeEdited;
  }

  /** The seed lexicon in this module's jar. */
  public static SeedLexicon bundled() {
    return new SeedLexicon(SeedFiles.onClassPath(), false);
  }

  /** A seed lexicon in a folder that holds {@code manifest.sha256} and a folder for each source. */
  public static SeedLexicon inFolder(Path folder) {
    return new SeedLexicon(SeedFiles.inFolder(requireNonNull(folder)), false);
  }

  /** The same, whatever has been edited in it since its manifest was written. */
  public static SeedLexicon edited(Path folder) {
    return new SeedLexicon(SeedFiles.inFolder(requireNonNull(folder)), true);
  }

  /**
   * The files that say something else than another's, by their paths.
   *
   * @throws DamagedSeedException if one of the other's files is missing
   */
  public List<String> filesUnlike(SeedLexicon other) {
    return other.manifest.checksums().entrySet().stream()
        .filter(each -> !Manifest.checksum(files.content(each.getKey())).equals(each.getValue()))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The lines of a file, as they stand. */
  public List<String> lines(String path) {
    return new String(content(path), StandardCharsets.UTF_8).lines().toList();
  }

  private byte[] content(String path) {
    byte[] content = files.content(path);
    return mayBeEdited ? content : manifest.verified(path, content);
  }

  /** The words of the CMU Pronouncing Dictionary, in alphabetical order. */
  public List<DictionaryEntry> dictionary() {
    return DictionaryEntry.grouped(read("cmudict/pronunciations.tsv", PronunciationRow::from));
  }

  /** The phones of the CMU Pronouncing Dictionary. */
  public List<PhoneRow> phones() {
    return read("cmudict/phones.tsv", PhoneRow::from);
  }

  /** How common words are, after SCOWL. */
  public List<CommonnessRow> commonness() {
    return read("scowl/commonness.tsv", CommonnessRow::from);
  }

  /** Words of the dictionary that are names and nothing else. */
  public List<NameRow> names() {
    return read("names/names.tsv", NameRow::from);
  }

  /** Words that don't belong in front of small children. */
  public List<UnfitRow> unfit() {
    return read("unfit/unfit.tsv", UnfitRow::from);
  }

  /** Inflected forms and their bases. */
  public List<InflectionRow> inflections() {
    return read("inflections/inflections.tsv", InflectionRow::from);
  }

  /** What WordNet says of words in common use. */
  public List<TagRow> tags() {
    return read("tags/tags.tsv", TagRow::from);
  }

  /** Words of one region's spelling, beside those that the commonness tells. */
  public List<RegionRow> regions() {
    return read("tags/regions.tsv", RegionRow::from);
  }

  /** Words judged one by one for small children; a word may be judged for several groups. */
  public List<StarterRow> starter() {
    return read("starter/starter.tsv", StarterRow::from);
  }

  /** Sentences written and judged by hand. */
  public List<SentenceRow> sentences() {
    return read("sentences/starter.tsv", SentenceRow::from);
  }

  /** The classes of nouns. */
  public List<NounClassRow> nounClasses() {
    return read("sentences/classes.tsv", NounClassRow::from);
  }

  /** What nouns stand for; one that is used in two ways has two rows. */
  public List<NounRow> nouns() {
    return read("sentences/nouns.tsv", NounRow::from);
  }

  /** How verbs are used; a verb has a row for each way. */
  public List<VerbRow> verbs() {
    return read("sentences/verbs.tsv", VerbRow::from);
  }

  /** What adjectives may describe. */
  public List<AdjectiveRow> adjectives() {
    return read("sentences/adjectives.tsv", AdjectiveRow::from);
  }

  /** Sentences with words to choose from. */
  public List<SceneRow> scenes() {
    return read("sentences/scenes.tsv", SceneRow::from);
  }

  /** Adverbs that may end a sentence. */
  public List<AdverbRow> adverbs() {
    return read("sentences/adverbs.tsv", AdverbRow::from);
  }

  /** The pictures that have words as their names. */
  public List<PictureRow> pictures() {
    return read("pictures/pictures.tsv", PictureRow::from);
  }

  /** The picture itself: an SVG document. */
  public String svg(PictureRow picture) {
    String path = "pictures/svg/%s.svg".formatted(picture.id());
    return new String(content(path), StandardCharsets.UTF_8);
  }

  /** Variants of the dictionary that checks leave aside. */
  public List<VariantRow> variantsAside() {
    return read("cmudict/variants-aside.tsv", VariantRow::from);
  }

  /** Pronunciations of the dictionary that a teacher says more carefully. */
  public List<CarefulRow> careful() {
    return read("cmudict/careful.tsv", CarefulRow::from);
  }

  /** Pronunciations in which the dictionary slips, with what people say in their place. */
  public List<CarefulRow> corrections() {
    return read("cmudict/corrections.tsv", CarefulRow::from);
  }

  /** The accents, the first being the one that the dictionary is in. */
  public List<AccentRow> accents() {
    return read("catalogue/accents.tsv", AccentRow::from);
  }

  /** The pronunciations of an accent; none for the accent that the dictionary is in. */
  public List<SpokenRow> spoken(AccentRow accent) {
    return accent.pronunciations().isEmpty()
        ? List.of()
        : read(accent.pronunciations(), SpokenRow::from);
  }

  /** The catalogue of correspondences, in the catalogue's own order. */
  public List<CorrespondenceRow> correspondences() {
    return read("catalogue/correspondences.tsv", CorrespondenceRow::from);
  }

  /** The learned costs of correspondences. */
  public List<WeightRow> weights() {
    return read("weights/weights.tsv", WeightRow::from);
  }

  /** Named sets of reading rules. */
  public List<RuleSetRow> ruleSets() {
    return read("rules/rules.tsv", RuleSetRow::from);
  }

  /** Named sets of words that children learn whole. */
  public List<SightWordSetRow> sightWordSets() {
    return read("sight-words/sets.tsv", SightWordSetRow::from);
  }

  /** The words of all sets of sight words, in their order. */
  public List<SightWordRow> sightWords() {
    return read("sight-words/words.tsv", SightWordRow::from);
  }

  /** The sequences that centres follow. */
  public List<SequenceRow> sequences() {
    return read("sequences/sequences.tsv", SequenceRow::from);
  }

  /** The steps of all sequences, in their order. */
  public List<StepRow> sequenceSteps() {
    return read("sequences/steps.tsv", StepRow::from);
  }

  /**
   * Any table of the seed folder, each row made into a value.
   *
   * @param path the file's path in the seed folder, such as {@code gold/gold.tsv}
   */
  public <R> List<R> read(String path, Function<TsvRow, R> toValue) {
    return TsvReader.read(path, content(path), toValue);
  }
}
