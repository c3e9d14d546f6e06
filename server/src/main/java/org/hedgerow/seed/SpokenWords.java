package org.hedgerow.seed;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;
import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.seedlexicon.AccentRow;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.seedlexicon.SpokenRow;

/** How words are said in the accents that the dictionary is not in. */
final class SpokenWords {

  /** One accent: its table by word, and what is needed to read it. */
  private record Spoken(Aligner aligner, Map<String, List<SpokenRow>> rows) {

    static Spoken of(SeedLexicon seed, AccentRow accent, AccentCatalogue catalogue) {
      return new Spoken(
          new Aligner(catalogue),
          seed.spoken(accent).stream().collect(groupingBy(SpokenRow::word, toList())));
    }

    List<Pronunciation> of(String word) {
      return rows.getOrDefault(word, List.of()).stream()
          .map(row -> pronunciation(aligner, row))
          .toList();
    }
  }

  private final List<Spoken> accents;

  /**
   * @param catalogues of the accents that are wanted
   */
  SpokenWords(SeedLexicon seed, List<AccentCatalogue> catalogues) {
    Map<String, AccentRow> rows =
        seed.accents().stream().collect(toMap(AccentRow::tag, row -> row));
    this.accents =
        catalogues.stream()
            .flatMap(
                catalogue ->
                    Optional.ofNullable(rows.get(catalogue.accent().tag())).stream()
                        .map(row -> Spoken.of(seed, row, catalogue)))
            .toList();
  }

  /** The pronunciations of a word, accent after accent; none where no table has it. */
  List<Pronunciation> of(String word) {
    List<Pronunciation> said = new ArrayList<>();
    accents.forEach(accent -> said.addAll(accent.of(word)));
    return said;
  }

  private static Pronunciation pronunciation(Aligner aligner, SpokenRow row) {
    return Pronunciation.aligned(
        aligner, row.word(), sounds(aligner, row), "", row.source(), false);
  }

  private static List<Sound> sounds(Aligner aligner, SpokenRow row) {
    try {
      return new SoundReader(aligner.accent()).read(row.sounds());
    } catch (IllegalArgumentException mistake) {
      throw new IllegalArgumentException(
          "%s in %s: %s".formatted(row.word(), aligner.accent(), mistake.getMessage()), mistake);
    }
  }
}
