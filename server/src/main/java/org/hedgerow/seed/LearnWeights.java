package org.hedgerow.seed;

import static java.util.stream.Collectors.toSet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Arpabet;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.WeightLearner;
import org.hedgerow.seedlexicon.CommonnessRow;
import org.hedgerow.seedlexicon.DictionaryEntry;
import org.hedgerow.seedlexicon.SeedLexicon;

/**
 * Learns the catalogue's weights from the dictionary and writes them as data; run by {@code
 * seed-lexicon/derive/weights.sh}. It learns from the words that SCOWL knows, since the rest of the
 * dictionary is mostly names.
 */
final class LearnWeights {

  private static final int ROUNDS = 12;
  private static final List<String> HEADER =
      List.of(
          "# What each correspondence costs an alignment: minus the natural logarithm of its share.",
          "# Learned from the dictionary by derive/weights.sh; not for editing by hand. See SOURCE.md.",
          "# accent\tgrapheme\tsounds\tcost");

  private static final List<String> UNALIGNED_HEADER =
      List.of(
          "# Pronunciations of words in common use that the catalogue cannot explain, and why.",
          "# Written by derive/weights.sh; not for editing by hand. See SOURCE.md.",
          "# word\tsounds\treason");

  private LearnWeights() {}

  /**
   * Takes the seed folder; writes {@code weights/weights.tsv} and {@code weights/unaligned.tsv}.
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    SeedLexicon seed = SeedLexicon.inFolder(folder);
    List<String> weights = new ArrayList<>(HEADER);
    List<String> unaligned = new ArrayList<>(UNALIGNED_HEADER);
    for (AccentCatalogue unweighted : SeedCatalogue.unweighted(seed)) {
      AccentCatalogue learned = learn(seed, unweighted);
      learned.realisations().forEach(each -> weights.add(line(learned, each)));
      unaligned.addAll(unaligned(seed, new Aligner(learned)));
    }
    Files.createDirectories(folder.resolve("weights"));
    write(folder.resolve("weights/weights.tsv"), weights);
    write(folder.resolve("weights/unaligned.tsv"), unaligned);
  }

  private static void write(Path file, List<String> lines) throws IOException {
    Files.writeString(file, String.join("\n", lines) + "\n");
  }

  /** Pronunciations of words in common use that the catalogue cannot explain. */
  private static List<String> unaligned(SeedLexicon seed, Aligner aligner) {
    Commonness commonness = new Commonness(seed.commonness());
    List<String> lines = new ArrayList<>();
    for (DictionaryEntry entry : seed.dictionary()) {
      if (commonness.of(entry.word()) > Commonness.RARE) {
        for (String phones : entry.pronunciations()) {
          List<Sound> sounds = sounds(aligner.catalogue(), phones);
          if (aligner.align(entry.word(), sounds).isEmpty()) {
            String obstacle = aligner.obstacle(entry.word(), sounds);
            lines.add(String.join("\t", entry.word(), phones, obstacle));
          }
        }
      }
    }
    return lines;
  }

  private static AccentCatalogue learn(SeedLexicon seed, AccentCatalogue unweighted) {
    Set<String> known = seed.commonness().stream().map(CommonnessRow::word).collect(toSet());
    WeightLearner learner = new WeightLearner(unweighted);
    for (DictionaryEntry entry : seed.dictionary()) {
      if (known.contains(entry.word())) {
        entry
            .pronunciations()
            .forEach(phones -> learner.add(entry.word(), sounds(unweighted, phones)));
      }
    }
    return learner.learn(ROUNDS);
  }

  private static List<Sound> sounds(AccentCatalogue catalogue, String phones) {
    return Arpabet.toIpa(phones).stream()
        .map(ipa -> catalogue.accent().sound(ipa).orElseThrow())
        .toList();
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
