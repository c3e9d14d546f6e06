package org.hedgerow.seed;

import static java.util.stream.Collectors.toSet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.phonics.WeightLearner;
import org.hedgerow.seedlexicon.AccentRow;
import org.hedgerow.seedlexicon.CommonnessRow;
import org.hedgerow.seedlexicon.DictionaryEntry;
import org.hedgerow.seedlexicon.SeedLexicon;

/**
 * Learns the catalogue's weights and writes them as data, for each accent from its own
 * pronunciations; run by {@code seed-lexicon/derive/weights.sh}. It learns from the words that
 * SCOWL knows, since the rest of the dictionary is mostly names.
 */
final class LearnWeights {

  private static final int ROUNDS = 12;

  /** An accent with fewer words takes the weights of its parent. */
  private static final int ENOUGH_WORDS = 1000;

  private static final List<String> HEADER =
      List.of(
          "# What each correspondence costs an alignment: minus the natural logarithm of its share.",
          "# Learned from the dictionary by derive/weights.sh; not for editing by hand. See SOURCE.md.",
          "# accent\tgrapheme\tsounds\tcost");

  private static final List<String> UNALIGNED_HEADER =
      List.of(
          "# Pronunciations of words in common use that the catalogue cannot explain, and why.",
          "# Written by derive/weights.sh; not for editing by hand. See SOURCE.md.",
          "# accent\tword\tsounds\treason");

  private LearnWeights() {}

  /**
   * Takes the seed folder; writes {@code weights/weights.tsv} and {@code weights/unaligned.tsv}.
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    SeedLexicon seed = SeedLexicon.inFolder(folder);
    List<String> weights = new ArrayList<>(HEADER);
    List<String> unaligned = new ArrayList<>(UNALIGNED_HEADER);
    List<AccentCatalogue> accents = SeedCatalogue.unweighted(seed);
    for (int i = 0; i < accents.size(); i++) {
      Said said = Said.in(seed, seed.accents().get(i), accents.get(i).accent());
      if (said.words().size() >= ENOUGH_WORDS) {
        AccentCatalogue learned = learn(seed, said, accents.get(i));
        learned.realisations().forEach(each -> weights.add(line(learned, each)));
        unaligned.addAll(unaligned(seed, said, new Aligner(learned)));
      }
    }
    Files.createDirectories(folder.resolve("weights"));
    write(folder.resolve("weights/weights.tsv"), weights);
    write(folder.resolve("weights/unaligned.tsv"), unaligned);
  }

  private static void write(Path file, List<String> lines) throws IOException {
    Files.writeString(file, String.join("\n", lines) + "\n");
  }

  /** The pronunciations that one accent's own table has, each with the word it is of. */
  private record Said(List<String> words, List<List<Sound>> sounds) {

    static Said in(SeedLexicon seed, AccentRow row, Accent accent) {
      Said said = new Said(new ArrayList<>(), new ArrayList<>());
      SoundReader reader = new SoundReader(accent);
      if (row.tag().equals(seed.accents().get(0).tag())) {
        for (DictionaryEntry entry : seed.dictionary()) {
          entry.pronunciations().forEach(phones -> said.add(entry.word(), reader.read(phones)));
        }
      }
      seed.spoken(row).forEach(each -> said.add(each.word(), reader.read(each.sounds())));
      return said;
    }

    private void add(String word, List<Sound> pronunciation) {
      words.add(word);
      sounds.add(pronunciation);
    }
  }

  /** Pronunciations of words in common use that the catalogue cannot explain. */
  private static List<String> unaligned(SeedLexicon seed, Said said, Aligner aligner) {
    Commonness commonness = new Commonness(seed.commonness());
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < said.words().size(); i++) {
      String word = said.words().get(i);
      List<Sound> sounds = said.sounds().get(i);
      if (commonness.of(word) > Commonness.RARE && aligner.align(word, sounds).isEmpty()) {
        String accent = aligner.accent().tag();
        String obstacle = aligner.obstacle(word, sounds);
        lines.add(String.join("\t", accent, word, Sound.spaced(sounds), obstacle));
      }
    }
    return lines;
  }

  private static AccentCatalogue learn(SeedLexicon seed, Said said, AccentCatalogue unweighted) {
    Set<String> known = seed.commonness().stream().map(CommonnessRow::word).collect(toSet());
    WeightLearner learner = new WeightLearner(unweighted);
    for (int i = 0; i < said.words().size(); i++) {
      if (known.contains(said.words().get(i))) {
        learner.add(said.words().get(i), said.sounds().get(i));
      }
    }
    return learner.learn(ROUNDS);
  }

  private static String line(AccentCatalogue catalogue, Realisation realisation) {
    String sounds = realisation.isSilent() ? "∅" : Sound.spaced(realisation.sounds());
    return String.join(
        "\t",
        catalogue.accent().tag(),
        realisation.grapheme().text(),
        sounds,
        String.format(Locale.ROOT, "%.4f", realisation.cost()));
  }
}
