package org.hedgerow.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The aligner against words aligned by hand. The held-out half is never looked at while the
 * catalogue or the aligner is worked on: its test tells the share that is right, and no words.
 */
class GoldTest {

  private record Gold(String word, String sounds, String alignment) {}

  private static final SeedLexicon SEED = SeedLexicon.bundled();
  private static Aligner aligner;
  private static SoundReader reader;

  @BeforeAll
  static void learn() {
    AccentCatalogue catalogue = SeedCatalogue.weighted(SEED).get(0);
    aligner = new Aligner(catalogue);
    reader = new SoundReader(catalogue.accent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"gold/tuning.tsv", "gold/further.tsv"})
  void wordsLookedAt(String file) {
    List<Gold> gold = gold(file);
    List<String> wrong = gold.stream().filter(each -> !isRight(each)).map(Gold::word).toList();
    assertThat(wrong).hasSizeLessThanOrEqualTo(gold.size() / 100);
  }

  @Test
  void heldOutHalf() {
    List<Gold> gold = gold("gold/held-out.tsv");
    long right = gold.stream().filter(GoldTest::isRight).count();
    System.out.printf("held-out gold: %d of %d words exactly right%n", right, gold.size());
    assertThat(right).isGreaterThanOrEqualTo(gold.size() * 99L / 100);
  }

  @Test
  void halvesAreDisjointAndLarge() {
    List<String> heldOut = gold("gold/held-out.tsv").stream().map(Gold::word).toList();
    List<String> tuning = gold("gold/tuning.tsv").stream().map(Gold::word).toList();
    List<String> further = gold("gold/further.tsv").stream().map(Gold::word).toList();
    assertThat(heldOut).doesNotContainAnyElementsOf(tuning).doesNotHaveDuplicates();
    assertThat(heldOut).doesNotContainAnyElementsOf(further);
    assertThat(heldOut.size()).isGreaterThanOrEqualTo(tuning.size());
    assertThat(heldOut.size() + tuning.size()).isGreaterThanOrEqualTo(1200);
  }

  private static boolean isRight(Gold gold) {
    return aligner
        .align(gold.word(), reader.read(gold.sounds()))
        .filter(alignment -> alignment.toString().equals(gold.alignment()))
        .isPresent();
  }

  private static List<Gold> gold(String path) {
    return SEED.read(
        path,
        row -> new Gold(row.required("word"), row.required("sounds"), row.required("alignment")));
  }
}
